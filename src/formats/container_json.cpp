#include "container_json.hpp"

#include "grain_fields.hpp"

namespace gritwright {

namespace {

struct FileSectionFields {
  Shape shape;
  void operator()(RecordWriter& io, const Section& section) const {
    switch (shape) {
      case Shape::round:
      case Shape::drum: io.required_number("diameter_cm", section.length, fields::cm_long); return;
      case Shape::hexagonal:
      case Shape::octagonal: io.required_number("across_flats_cm", section.length, fields::cm_long); return;
      default: fields::SectionFields{}(io, section);
    }
  }
};

/// Grain with every property outright; a file says neither where a figure comes from nor which material it was.
struct FileComponentFields {
  void operator()(RecordWriter& io, const Component& component) const {
    Component plain = component;
    plain.material.reset();
    fields::ComponentFields{}(io, plain);
    io.json().erase("provenance");
  }
};

struct FileBottomLayerFields {
  void operator()(RecordWriter& io, const BottomLayer& layer) const {
    io.required_number("thickness_cm", layer.thickness, fields::cm);
    io.object("component", layer.component, FileComponentFields{});
  }
};

struct TopDressingFields {
  void operator()(RecordWriter& io, const Depth& thickness) const { io.required_number("thickness_cm", thickness, fields::cm); }
};

}  // namespace

nlohmann::ordered_json container_json(const Container& container) {
  RecordWriter io;
  const FileSectionFields section{container.shape};
  io.text("name", container.name);
  io.word("shape", container.shape, fields::shape_words);
  if (container.shape == Shape::profile) {
    io.list("areas", container.areas, fields::AreaFields{});
  } else {
    io.object("rim", container.rim, section);
    io.object("middle", container.middle, section);
    io.object("base", container.base, section);
  }
  io.required_number("depth_cm", container.depth, fields::cm);
  io.number("freeboard_cm", container.freeboard, fields::cm);
  io.number("water_fill_ml", container.water_fill, fields::ml);
  io.number("corner_radius_cm", container.corner_radius, fields::cm_long);
  io.number("fillet_radius_cm", container.fillet_radius, fields::cm_long);
  io.number("exponent", container.exponent, fields::plain);
  io.number("saucer_cm", container.saucer, fields::cm);
  io.number("wick_cm", container.wick, fields::cm);
  io.number("tilt_deg", container.tilt.angle, fields::deg);
  if (container.tilt.axis == TiltAxis::width) io.word("tilt_axis", container.tilt.axis, fields::axis_words);
  io.number("mass_kg", container.mass, fields::kg);
  io.object("mound", container.mound, fields::MoundFields{});
  io.object("bottom_layer", container.bottom_layer, FileBottomLayerFields{});
  io.object("top_dressing", container.top_dressing, TopDressingFields{});
  return std::move(io.json());
}

}  // namespace gritwright
