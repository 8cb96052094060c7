#include "message_templates.hpp"

#include <algorithm>
#include <array>

// lupdate collects what stands in GRITWRIGHT_TEXT (-tr-function-alias); at run time it is the bare literal.
#define GRITWRIGHT_TEXT(literal) literal

namespace gritwright {

namespace {

struct Template {
  std::string_view code;
  std::string_view text;
};

constexpr std::array templates{
    Template{"catalogue.negative", GRITWRIGHT_TEXT("{low} is negative; a catalogue figure is not")},
    Template{"catalogue.no-name", GRITWRIGHT_TEXT("the material has no name")},
    Template{"catalogue.no-source", GRITWRIGHT_TEXT("the figure names no source")},
    Template{"catalogue.range-upside-down", GRITWRIGHT_TEXT("the range runs from {low} down to {high}")},
    Template{"catalogue.share-above-one", GRITWRIGHT_TEXT("the share {high} is above 1")},
    Template{"catalogue.value-outside-range", GRITWRIGHT_TEXT("{value} lies outside its own range {low} to {high}")},
    Template{"component.class-has-no-pan", GRITWRIGHT_TEXT("grain of one size has no pan and no top class; leave this out or give a grading")},
    Template{"component.no-sieve-tests-here", GRITWRIGHT_TEXT("the sieve test {file} can't be read from here; give the grading itself")},
    Template{"component.no-sizes", GRITWRIGHT_TEXT("the grain sizes are missing; give grading, class_mm or sieve_test")},
    Template{"component.sizes-twice", GRITWRIGHT_TEXT("the grain sizes are given in more than one way; give one of grading, class_mm and sieve_test")},
    Template{"component.unknown-material", GRITWRIGHT_TEXT("there is no material called {name} in the catalogue; nearest: {nearest}")},
    Template{"container.area-not-positive", GRITWRIGHT_TEXT("the area is {area_cm2} cm2; it must be above 0 (only the floor may be a point)")},
    Template{"container.corner-too-large", GRITWRIGHT_TEXT("the corner radius {radius_cm} cm is more than half of the shorter side ({limit_cm} cm)")},
    Template{"container.corner-without-rectangle", GRITWRIGHT_TEXT("a corner radius belongs to a rectangular container; the other shapes have none")},
    Template{"container.exponent-missing", GRITWRIGHT_TEXT("a soft-cornered rectangle needs its exponent (2 is an ellipse, 4 a rectangle with soft corners)")},
    Template{"container.exponent-too-small", GRITWRIGHT_TEXT("the exponent is {exponent}; it must be 1 or more")},
    Template{"container.exponents-differ", GRITWRIGHT_TEXT("the exponent {exponent} differs from {other}; a container has one")},
    Template{"container.fill-line-below-floor", GRITWRIGHT_TEXT("the fill line lies {freeboard_cm} cm below the rim, but the container is only {depth_cm} cm deep")},
    Template{"container.fillet-too-large", GRITWRIGHT_TEXT("the fillet radius {radius_cm} cm leaves no floor; at most {limit_cm} cm fits here")},
    Template{"container.fillet-without-floor-edge", GRITWRIGHT_TEXT("this shape has no edge between floor and wall for a fillet; a bowl and a table of areas already hold the curve")},
    Template{"container.layers-fill-the-pot", GRITWRIGHT_TEXT("bottom layer and top dressing together take {layers_cm} cm of the {filled_cm} cm filled; nothing is left for the mix")},
    Template{"container.length-negative", GRITWRIGHT_TEXT("the length is {length_cm} cm; it can't be negative")},
    Template{"container.length-not-positive", GRITWRIGHT_TEXT("the length is {length_cm} cm; it must be above 0")},
    Template{"container.mass-negative", GRITWRIGHT_TEXT("the mass is {mass_kg} kg; it can't be negative")},
    Template{"container.middle-missing", GRITWRIGHT_TEXT("a drum needs its diameter at half the depth")},
    Template{"container.no-areas", GRITWRIGHT_TEXT("the profile has no areas; give height_cm and area_cm2 from the floor to the rim")},
    Template{"container.profile-below-rim", GRITWRIGHT_TEXT("the table of areas ends at {height_cm} cm, below the rim at {depth_cm} cm")},
    Template{"container.profile-not-from-floor", GRITWRIGHT_TEXT("the table of areas starts at {height_cm} cm; the first row is the floor at 0")},
    Template{"container.profile-not-rising", GRITWRIGHT_TEXT("the height {height_cm} cm follows {before_cm} cm; heights must rise")},
    Template{"container.profile-too-few", GRITWRIGHT_TEXT("the table of areas has {rows} rows; at least two are needed, floor and rim")},
    Template{"container.tilt-out-of-range", GRITWRIGHT_TEXT("the tilt is {tilt_deg} degrees; expected 0 to 60")},
    Template{"container.unknown-mound-form", GRITWRIGHT_TEXT("{form} is no form of a mound; expected paraboloid, cone or ellipsoid")},
    Template{"container.unknown-shape", GRITWRIGHT_TEXT("{shape} is no shape; expected rectangular, oval, round, hexagonal, octagonal, drum, superellipse, bowl or profile")},
    Template{"container.unknown-tilt-axis", GRITWRIGHT_TEXT("{axis} is no axis to tilt about; expected length or width")},
    Template{"container.volume-not-positive", GRITWRIGHT_TEXT("the volume is {volume_ml} mL; it must be above 0")},
    Template{"container.walls-close", GRITWRIGHT_TEXT("with {diameter_cm} cm at half the depth the walls would meet; check the three diameters")},
    Template{"csv.duplicate-column", GRITWRIGHT_TEXT("the column {column} stands twice in the header")},
    Template{"csv.missing-column", GRITWRIGHT_TEXT("the header has no column {column}; expected aperture_mm with retained_g, with gross_g and tare_g, or with retained_l")},
    Template{"csv.no-header", GRITWRIGHT_TEXT("there is no header line; expected aperture_mm,retained_g")},
    Template{"csv.row-after-pan", GRITWRIGHT_TEXT("a row follows the pan (line {pan_line}); the pan is the last row")},
    Template{"csv.too-many-cells", GRITWRIGHT_TEXT("{found} cells stand here; the header has {expected} columns")},
    Template{"csv.unknown-column", GRITWRIGHT_TEXT("there is no column called {column}")},
    Template{"date.not-a-day", GRITWRIGHT_TEXT("{text} is not a day; expected a date like 2026-03-14")},
    Template{"file.empty", GRITWRIGHT_TEXT("the file is empty; expected a sieve test, a mix or a container")},
    Template{"file.is-folder", GRITWRIGHT_TEXT("this is a folder; name a file")},
    Template{"file.missing", GRITWRIGHT_TEXT("the file is not there or can't be read")},
    Template{"file.too-large", GRITWRIGHT_TEXT("the file is larger than {limit_mb} MB; a sieve test or a mix is a few kilobytes")},
    Template{"file.unreadable", GRITWRIGHT_TEXT("reading stopped half-way; nothing was done with the file")},
    Template{"format.unknown", GRITWRIGHT_TEXT("the format is {found}; expected {expected}")},
    Template{"grading.aperture-order", GRITWRIGHT_TEXT("the opening {aperture_mm} mm after {before_mm} mm is out of order; write a grading coarse to fine")},
    Template{"grading.empty", GRITWRIGHT_TEXT("the grading has no points")},
    Template{"grading.passing-out-of-range", GRITWRIGHT_TEXT("{percent} % passing is outside 0 to 100")},
    Template{"grading.passing-rescaled", GRITWRIGHT_TEXT("passing ran from {low_percent} to {high_percent} % and was rescaled to 0-100 %")},
    Template{"json.syntax", GRITWRIGHT_TEXT("this is not JSON from here on: {text}")},
    Template{"json.too-deep", GRITWRIGHT_TEXT("brackets are nested deeper than {limit} levels")},
    Template{"key.duplicate", GRITWRIGHT_TEXT("the key {key} stands twice; give it once")},
    Template{"key.missing", GRITWRIGHT_TEXT("the key {key} is missing")},
    Template{"key.unknown", GRITWRIGHT_TEXT("there is no key called {key}")},
    Template{"laboratory.fineness-interpolated", GRITWRIGHT_TEXT("the fineness modulus reads {aperture_mm} mm off the curve, that sieve was not used")},
    Template{"laboratory.fineness-needs-finer-sieve", GRITWRIGHT_TEXT("the fineness modulus is not defined: {percent} % is finer than the finest sieve, {finest_mm} mm, and it asks for {aperture_mm} mm")},
    Template{"laboratory.fineness-open-top", GRITWRIGHT_TEXT("{percent} % stayed on the coarsest sieve, {aperture_mm} mm; the fineness modulus counts none of it on coarser ones")},
    Template{"laboratory.outside-sieves", GRITWRIGHT_TEXT("a laboratory figure without a value needs a size outside the sieves used; nothing is extrapolated")},
    Template{"mix.no-components", GRITWRIGHT_TEXT("the mix has no components")},
    Template{"number.decimal-comma", GRITWRIGHT_TEXT("{text} has a decimal comma; write a point, or separate the columns by ; or tab")},
    Template{"number.missing", GRITWRIGHT_TEXT("a number is missing here")},
    Template{"number.not-a-number", GRITWRIGHT_TEXT("{text} is not a number")},
    Template{"number.too-large", GRITWRIGHT_TEXT("{text} is too large to be a measured value")},
    Template{"screen.no-opening", GRITWRIGHT_TEXT("name at least one opening to screen at")},
    Template{"screen.opening-above-sieves", GRITWRIGHT_TEXT("{aperture_mm} mm is above the coarsest sieve of the test, {coarsest_mm} mm; how the grain above that is spread is assumed")},
    Template{"screen.opening-below-sieves", GRITWRIGHT_TEXT("{aperture_mm} mm is below the finest sieve of the test, {finest_mm} mm, and {percent} % is finer than that: test with a finer sieve")},
    Template{"screen.opening-not-positive", GRITWRIGHT_TEXT("an opening of {aperture_mm} mm can't be")},
    Template{"screen.opening-repeated", GRITWRIGHT_TEXT("the opening {aperture_mm} mm is named twice")},
    Template{"screen.sharpness-not-positive", GRITWRIGHT_TEXT("a sharpness of {sharpness} can't be; expected more than 0")},
    Template{"sieve-test.aperture-not-falling", GRITWRIGHT_TEXT("the opening {aperture_mm} mm follows {above_mm} mm; sieves run from coarse to fine")},
    Template{"sieve-test.aperture-not-positive", GRITWRIGHT_TEXT("an opening of {aperture_mm} mm can't be; give the free opening of the sieve in mm")},
    Template{"sieve-test.aperture-repeated", GRITWRIGHT_TEXT("the opening {aperture_mm} mm stands twice; each sieve counts once")},
    Template{"sieve-test.base-recovered", GRITWRIGHT_TEXT("no starting mass was given: the percentages refer to the {mass_g} g recovered, and a loss would not show")},
    Template{"sieve-test.bulk-above-particle", GRITWRIGHT_TEXT("the bulk density {bulk_g_l} g/L is above the particle density {particle_g_l} g/L")},
    Template{"sieve-test.by-volume", GRITWRIGHT_TEXT("measured in litres: shares of loose volume stand for shares of mass, as if every fraction lay equally dense")},
    Template{"sieve-test.crumbs-range", GRITWRIGHT_TEXT("{percent} % crumbs can't be; expected 0 to 100")},
    Template{"sieve-test.density-not-positive", GRITWRIGHT_TEXT("a density of {density_g_l} g/L can't be")},
    Template{"sieve-test.diameter-too-small", GRITWRIGHT_TEXT("a sieve of {diameter_mm} mm has no sieving area; give the diameter of the frame in mm")},
    Template{"sieve-test.gain", GRITWRIGHT_TEXT("the fractions outweigh the sample by {percent} %; the balance's resolution explains it, the percentages bear it")},
    Template{"sieve-test.loss", GRITWRIGHT_TEXT("{percent} % of the sample was lost while sieving; above 0.3 % a laboratory would repeat the test")},
    Template{"sieve-test.loss-large", GRITWRIGHT_TEXT("{percent} % of the sample was lost while sieving, more than 1 %: look for a spilled or forgotten pan")},
    Template{"sieve-test.mass-negative", GRITWRIGHT_TEXT("a mass of {mass_g} g can't be")},
    Template{"sieve-test.measured-twice", GRITWRIGHT_TEXT("the same fraction is given in more than one way; give its mass, its gross and tare, or its litres")},
    Template{"sieve-test.mixed-measures", GRITWRIGHT_TEXT("masses and litres are mixed; measure all fractions in one way")},
    Template{"sieve-test.moisture-range", GRITWRIGHT_TEXT("{percent} % moisture can't be; expected 0 or more, water per dry mass")},
    Template{"sieve-test.no-pan", GRITWRIGHT_TEXT("the pan is missing; the last row holds what fell through the finest sieve, 0 if nothing did")},
    Template{"sieve-test.no-rows", GRITWRIGHT_TEXT("there is no sieve; expected at least one row above the pan")},
    Template{"sieve-test.nothing-retained", GRITWRIGHT_TEXT("nothing was left on the sieves or in the pan")},
    Template{"sieve-test.overload", GRITWRIGHT_TEXT("{mass_g} g lay on the {aperture_mm} mm sieve, which sieves well up to {limit_g} g; sieve in two goes")},
    Template{"sieve-test.pan", GRITWRIGHT_TEXT("{percent} % is finer than the finest sieve, {aperture_mm} mm; a finer sieve would show where the dust begins")},
    Template{"sieve-test.resolution-negative", GRITWRIGHT_TEXT("a resolution of {mass_g} g can't be")},
    Template{"sieve-test.sample-not-positive", GRITWRIGHT_TEXT("a sample of {mass_g} g can't be; expected more than 0")},
    Template{"sieve-test.sample-small", GRITWRIGHT_TEXT("{mass_g} g is a small sample for grain of {size_mm} mm; take {least_g} g or more")},
    Template{"sieve-test.sample-small-for-stone", GRITWRIGHT_TEXT("{mass_g} g is a small sample for grain of {size_mm} mm if it is stone; take {least_g} g or more, or give the particle density of light grain")},
    Template{"sieve-test.sum-above-sample", GRITWRIGHT_TEXT("the fractions add up to {sum_g} g, the sample is {sample_g} g; the balance explains {explained_g} g")},
    Template{"sieve-test.tare-above-gross", GRITWRIGHT_TEXT("the tare of {tare_g} g is above the gross mass of {gross_g} g")},
    Template{"sieve-test.top-open", GRITWRIGHT_TEXT("{percent} % stayed on the coarsest sieve, {aperture_mm} mm; what needs its size takes it to end at {top_mm} mm")},
    Template{"sieve-test.unknown-basis", GRITWRIGHT_TEXT("{text} is no basis; expected original or recovered")},
    Template{"sieve-test.volume-negative", GRITWRIGHT_TEXT("a volume of {volume_l} L can't be")},
    Template{"sieve-test.washed-above-dry", GRITWRIGHT_TEXT("{washed_g} g after washing is more than the {dry_g} g before it")},
    Template{"sieve-test.washed-without-dry", GRITWRIGHT_TEXT("the mass after washing needs the dry mass before washing")},
    Template{"text.not-utf8", GRITWRIGHT_TEXT("this byte is not UTF-8; save the file as UTF-8")},
    Template{"text.nul", GRITWRIGHT_TEXT("there is a NUL byte here; this is not a text file")},
    Template{"value.wrong-kind", GRITWRIGHT_TEXT("expected {expected} here")},
};

}  // namespace

std::optional<std::string_view> message_template(std::string_view code) {
  const auto* found = std::ranges::find(templates, code, &Template::code);
  if (found == templates.end()) return std::nullopt;
  return found->text;
}

}  // namespace gritwright
