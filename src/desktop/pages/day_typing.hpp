#pragma once
// What is typed on the page of the repotting day, read.

#include <QString>
#include <optional>
#include <string>

#include "gritwright/formats/typed_quantity.hpp"
#include "gritwright/result.hpp"

namespace gritwright::desktop {

[[nodiscard]] inline std::string trimmed_text(const QString& text) { return text.trimmed().toStdString(); }

/// A text as litres; nothing where it is empty.
[[nodiscard]] inline Result<std::optional<double>> typed_litres(const QString& text) {
  if (text.trimmed().isEmpty()) return std::optional<double>();
  const auto volume = parse_volume(trimmed_text(text), VolumeUnit::litre);
  if (!volume) return volume.problems();
  return std::optional(in_l(LooseVolume(*volume)));
}

}  // namespace gritwright::desktop
