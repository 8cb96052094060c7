#include "typed_text.hpp"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>

#include "gritwright/formats/number.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "stock_text.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

bool is_bare_number(const QString& text) {
  const std::string trimmed = text.trimmed().toStdString();
  if (parse_number(trimmed, DecimalMark::point_or_comma).ok()) return true;
  return trimmed.find('/') != std::string::npos && parse_length(trimmed, LengthUnit::inch).ok() &&
         trimmed.find_first_not_of("0123456789/ ") == std::string::npos;
}

bool has_us_unit(Kind kind) { return !unit_of(kind, UnitSystem::us).isEmpty() && unit_of(kind, UnitSystem::us) != unit_of(kind, UnitSystem::metric); }

/// "2.5 in" without its unit, if that unit is the one shown.
std::optional<QString> without_unit(const QString& kept, const QString& unit) {
  const QString text = kept.trimmed();
  if (!text.endsWith(unit, Qt::CaseInsensitive)) return std::nullopt;
  const QString number = text.chopped(unit.size()).trimmed();
  return is_bare_number(number) ? std::optional(number) : std::nullopt;
}

QString number_of(const std::string& with_unit) {
  const QString text = to_typed(with_unit);
  return text.left(text.lastIndexOf(u' '));
}

/// The kept text in the other units: number and unit as report/ writes them, empty if it can't be read.
std::string converted(const QString& kept, Kind kind, UnitSystem units) {
  const std::string text = kept.trimmed().toStdString();
  switch (kind) {
    case Kind::mass:
      if (const auto mass = parse_mass(text, MassUnit::gram)) return mass_text(mass->mass, units);
      break;
    case Kind::length:
      if (const auto length = parse_length(text, LengthUnit::centimetre)) return depth_text(Depth(*length), units);
      break;
    case Kind::frame:
      if (const auto length = parse_length(text, LengthUnit::millimetre)) return depth_text(Depth(*length), units);
      break;
    case Kind::volume:
      if (const auto volume = parse_volume(text, VolumeUnit::litre)) return volume_text(in_l(LooseVolume(*volume)), units);
      break;
    case Kind::pot_volume:
      if (const auto volume = parse_volume(text, VolumeUnit::millilitre)) return volume_text(in_l(LooseVolume(*volume)), units);
      break;
    case Kind::density:
      if (const auto g_per_l = parse_density(text)) return density_text(*g_per_l, units);
      break;
    default: break;
  }
  return {};
}

/// A computed figure has digits without end, which nobody reads. Empty where the digits are those that somebody typed.
QString sensible_digits(const QString& kept, Kind kind) {
  if (kind != Kind::density && kind != Kind::percent && kind != Kind::mass) return {};
  const QString text = kept.trimmed();
  const qsizetype mark = std::max(text.lastIndexOf(u'.'), text.lastIndexOf(u','));
  constexpr qsizetype most_typed_decimals = 4;
  if (mark < 0 || text.size() - mark - 1 <= most_typed_decimals) return {};
  const auto value = parse_number(text.toStdString(), DecimalMark::point_or_comma);
  if (!value) return {};
  constexpr int digits_of_a_balance = 4;
  return kind == Kind::mass ? number_text(*value, digits_of_a_balance) : measured_text(*value);
}

}  // namespace

QString unit_of(Kind kind, UnitSystem units) {
  const bool us = units == UnitSystem::us;
  switch (kind) {
    case Kind::words:
    case Kind::number: return {};
    case Kind::aperture: return QStringLiteral("mm");
    case Kind::mass: return us ? QStringLiteral("oz") : QStringLiteral("g");
    case Kind::length: return us ? QStringLiteral("in") : QStringLiteral("cm");
    case Kind::frame: return us ? QStringLiteral("in") : QStringLiteral("mm");
    case Kind::volume: return us ? QStringLiteral("qt") : QStringLiteral("L");
    case Kind::pot_volume: return us ? QStringLiteral("qt") : QStringLiteral("mL");
    case Kind::density: return us ? QStringLiteral("lb/ft3") : QStringLiteral("g/L");
    case Kind::percent: return QStringLiteral("%");
  }
  return {};
}

QString hint_text(const QString& hint, UnitSystem units) {
  if (units == UnitSystem::metric) return hint;
  static const QRegularExpression lengths(QStringLiteral("([0-9]+(?:[.,][0-9]+)?)(?:( [^0-9]{1,8} )([0-9]+(?:[.,][0-9]+)?))?[ \\x{a0}]cm\\b"));
  const auto inches = [](const QString& cm) { return number_of(converted(cm, Kind::length, UnitSystem::us)); };
  QString text = hint;
  for (auto found = lengths.match(text); found.hasMatch(); found = lengths.match(text)) {
    const QString first = inches(found.captured(1));
    const QString range = found.captured(3).isEmpty() ? first : first + found.captured(2) + inches(found.captured(3));
    text.replace(found.capturedStart(), found.capturedLength(), range + QChar(QChar::Nbsp) + unit_of(Kind::length, units));
  }
  return text;
}

QString kept_text(const QString& typed, Kind kind, UnitSystem units) {
  if (units == UnitSystem::metric || !has_us_unit(kind) || !is_bare_number(typed)) return typed;
  return typed.trimmed() + u' ' + unit_of(kind, units);
}

QString shown_text(const QString& kept, Kind kind, UnitSystem units) {
  if (kept.trimmed().isEmpty()) return kept;
  if (QString rounded = sensible_digits(kept, kind); !rounded.isEmpty() && (units == UnitSystem::metric || !has_us_unit(kind))) return rounded;
  if (!has_us_unit(kind)) return kept;
  const QString unit = unit_of(kind, units);
  if (const auto number = without_unit(kept, unit)) return *number;
  const bool bare = is_bare_number(kept);
  if (units == UnitSystem::metric) {
    // A unit that was typed stays in sight: what the user wrote is what the user reads.
    if (bare || without_unit(kept, unit_of(kind, UnitSystem::us)) == std::nullopt) return kept;
  } else if (!bare) {
    return kept;
  }
  const std::string text = converted(kept, kind, units);
  if (text.empty()) return kept;
  return text.ends_with(unit.toStdString()) && text.size() > static_cast<std::size_t>(unit.size()) &&
                 text[text.size() - static_cast<std::size_t>(unit.size()) - 1] == ' '
             ? number_of(text)
             : to_typed(text);
}

}  // namespace gritwright::desktop
