#include "tree_groups.hpp"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>

#include "bench_state.hpp"
#include "find_problem.hpp"
#include "gritwright/formats/number.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "material_words.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

class TreeGroupText {
  Q_DECLARE_TR_FUNCTIONS(TreeGroups)
};

/// The names that new records come with, for translators.
[[maybe_unused]] constexpr const char* common_group_names[] = {
    QT_TRANSLATE_NOOP("profiles", "very small trees"),       QT_TRANSLATE_NOOP("profiles", "small trees"),
    QT_TRANSLATE_NOOP("profiles", "conifers"),               QT_TRANSLATE_NOOP("profiles", "conifers, large or collected"),
    QT_TRANSLATE_NOOP("profiles", "deciduous, developing"),  QT_TRANSLATE_NOOP("profiles", "deciduous, refined"),
    QT_TRANSLATE_NOOP("profiles", "deciduous conifers"),     QT_TRANSLATE_NOOP("profiles", "evergreen broadleaf"),
    QT_TRANSLATE_NOOP("profiles", "acid lovers"),            QT_TRANSLATE_NOOP("profiles", "tropicals")};

// What a wish on sizes starts with until they are typed: the band and the dust of most groups.
const BandShare usual_band{aperture_mm(3), aperture_mm(6)};
const FinerShare usual_dust{aperture_mm(1)};
constexpr double usual_band_percent = 85;
constexpr double usual_dust_percent = 5;

bool is_about(const Wish& wish, WishRow row) {
  if (const auto* in_pot = std::get_if<FigureInPot>(&wish.figure)) return pot_figure_of(row) == in_pot->figure;
  switch (row) {
    case WishRow::band: return std::holds_alternative<BandShare>(wish.figure);
    case WishRow::finer: return std::holds_alternative<FinerShare>(wish.figure);
    case WishRow::exchange: return std::holds_alternative<ExchangeCapacity>(wish.figure);
    case WishRow::price: return std::holds_alternative<MixPrice>(wish.figure);
    case WishRow::limits: return std::holds_alternative<PassingLimits>(wish.figure);
    case WishRow::nearest: return std::holds_alternative<NearestGrading>(wish.figure);
    default: return false;
  }
}

auto wish_about(SpeciesProfile& profile, WishRow row) {
  return std::ranges::find_if(profile.wishes, [row](const Wish& wish) { return is_about(wish, row); });
}

WishFigure figure_without_sizes(WishRow row) {
  if (const auto figure = pot_figure_of(row)) return FigureInPot{*figure, {}};
  switch (row) {
    case WishRow::band: return usual_band;
    case WishRow::finer: return usual_dust;
    case WishRow::exchange: return ExchangeCapacity{};
    default: return MixPrice{};
  }
}

Result<double> plain_number(std::string_view text) { return parse_number(text, DecimalMark::point_or_comma); }

/// Empty for an empty text; a fault is put at `side`.
std::optional<double> side_of(const QString& text, const char* side, Result<double> (*reading)(std::string_view), Problems& problems) {
  if (text.trimmed().isEmpty()) return std::nullopt;
  const auto read = reading(text.trimmed().toStdString());
  for (Problem problem : read.problems()) {
    problem.where.pointer = side;
    problems.push_back(std::move(problem));
  }
  return read ? std::optional(*read) : std::nullopt;
}

}  // namespace

std::vector<TreeGroup> tree_groups(const OpenWorkbook& workbook) {
  std::vector<TreeGroup> groups;
  for (const SpeciesProfile& profile : common_profiles()) groups.push_back({profile, std::nullopt, true});
  for (auto& stored : workbook.all<SpeciesProfile>()) {
    const auto same = std::ranges::find_if(groups, [&](const TreeGroup& group) { return group.profile.name == stored.record.name && !group.stored; });
    TreeGroup& group = same != groups.end() ? *same : groups.emplace_back();
    group.profile = stored.record;
    group.stored = std::move(stored);
  }
  return groups;
}

QString group_name(const SpeciesProfile& profile) { return QCoreApplication::translate("profiles", profile.name.c_str()); }

QString group_state(const TreeGroup& group) {
  if (group.profile.left_out) return TreeGroupText::tr("left out");
  if (!group.is_common) return TreeGroupText::tr("own");
  return group.stored ? TreeGroupText::tr("changed") : TreeGroupText::tr("common practice");
}

GroupSheet sheet_of(const SpeciesProfile& profile) {
  BenchState state;
  start_from(state, profile);
  GroupSheet sheet;
  sheet.wishes = state.find.wishes;
  sheet.dust_size = state.find.dust_size;
  for (const Wish& wish : profile.wishes)
    if (const auto* band = std::get_if<BandShare>(&wish.figure)) sheet.band = Band{band->from, band->to};
  return sheet;
}

Problems change_wish(SpeciesProfile& profile, WishRow row, const WishText& typed) {
  Problems problems;
  const auto was = wish_about(profile, row);
  Wish wish = was != profile.wishes.end() ? *was : Wish{figure_without_sizes(row), {}, {}, false, 1};
  bool is_nothing = false;
  if (row == WishRow::limits || row == WishRow::nearest) {
    is_nothing = typed.least.trimmed().isEmpty();
    const auto figure = curve_figure(row, typed.least);
    for (Problem problem : figure.problems()) {
      problem.where.pointer = "/least";
      problems.push_back(std::move(problem));
    }
    if (figure) wish.figure = *figure;
  } else {
    const auto reading = row == WishRow::wet_mass ? parse_density : pot_figure_of(row) ? parse_percent : plain_number;
    wish.least = side_of(typed.least, "/least", reading, problems);
    wish.most = side_of(typed.most, "/most", reading, problems);
    is_nothing = !wish.least && !wish.most;
  }
  wish.hard = typed.hard;
  wish.weight = side_of(typed.weight, "/weight", plain_number, problems).value_or(1);
  if (!problems.empty()) return problems;
  if (is_nothing) {
    if (was != profile.wishes.end()) profile.wishes.erase(was);
  } else if (was != profile.wishes.end()) {
    *was = std::move(wish);
  } else {
    profile.wishes.push_back(std::move(wish));
  }
  return {};
}

void change_band(SpeciesProfile& profile, std::optional<Aperture> from, std::optional<Aperture> to) {
  auto wish = wish_about(profile, WishRow::band);
  if (wish == profile.wishes.end()) wish = profile.wishes.insert(profile.wishes.begin(), Wish{usual_band, usual_band_percent, {}, false, 1});
  auto& band = std::get<BandShare>(wish->figure);
  band = {from.value_or(band.from), to.value_or(band.to)};
}

void change_dust_size(SpeciesProfile& profile, Aperture size) {
  auto wish = wish_about(profile, WishRow::finer);
  if (wish == profile.wishes.end()) wish = profile.wishes.insert(profile.wishes.end(), Wish{usual_dust, {}, usual_dust_percent, false, 1});
  wish->figure = FinerShare{size};
}

namespace {

std::string material_called(const QString& name, const Catalogue& catalogue) {
  if (const Material* const found = catalogue.find(name.toStdString())) return found->name;
  const auto by_word = std::ranges::find_if(catalogue.materials(), [&](const Material& one) { return material_words(one.name).compare(name, Qt::CaseInsensitive) == 0; });
  return by_word != catalogue.materials().end() ? by_word->name : name.toStdString();
}

}  // namespace

QString starting_parts_text(const std::vector<StartingPart>& parts) {
  QStringList words;
  for (const StartingPart& part : parts) words << QStringLiteral("%1 %2").arg(number_text(part.parts.value(), 6), material_words(part.material));
  return words.join(QStringLiteral(" : "));
}

Result<std::vector<StartingPart>> starting_parts_of(const QString& text, const Catalogue& catalogue, const std::vector<StartingPart>& shown) {
  static const QRegularExpression part(QStringLiteral("^\\s*([0-9.,]+)\\s+(\\S.*?)\\s*$"));
  std::vector<StartingPart> parts;
  Problems problems;
  for (const QString& each : text.split(u':', Qt::SkipEmptyParts)) {
    const auto match = part.match(each);
    const auto number = parse_number(match.captured(1).toStdString(), DecimalMark::point_or_comma);
    if (match.hasMatch() && number) {
      const QString name = match.captured(2);
      const auto known = std::ranges::find(shown, name, [](const StartingPart& one) { return material_words(one.material); });
      parts.push_back({known != shown.end() ? known->material : material_called(name, catalogue), Parts(*number)});
    } else problems.push_back({"profile.part-unreadable", {}, {{"text", each.trimmed().toStdString()}}});
  }
  if (!problems.empty()) return problems;
  return parts;
}

}  // namespace gritwright::desktop
