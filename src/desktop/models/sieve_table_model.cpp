#include "sieve_table_model.hpp"

#include <QBrush>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>

#include "gritwright/formats/number.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "pasted_cells.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

const PanText& no_pan() {
  static const PanText empty;
  return empty;
}

/// Two columns that begin or end with the pan in the first one are openings and what stayed on them.
bool is_stack(const PastedCells& cells) { return !cells.rows.empty() && (cells.is_pan(cells.rows.size() - 1) || cells.is_pan(0)); }

/// Every opening can be read and is wider than the one before: a list from fine to coarse, whose order leaves no doubt.
bool is_fine_to_coarse(const std::vector<PanText>& rows) {
  std::optional<Aperture> before;
  for (const PanText& row : rows) {
    const auto opening = parse_aperture(row.aperture.trimmed().toStdString());
    if (!opening || (before && !(*before < *opening))) return false;
    before = *opening;
  }
  return rows.size() > 1;
}

int decimals_of(const QString& figure) {
  const auto mark = figure.lastIndexOf(QRegularExpression(QStringLiteral("[.,]")));
  return mark < 0 ? 0 : static_cast<int>(figure.size() - mark - 1);
}

/// One column whose last figure is all of those above it together, each as it is rounded.
bool ends_with_its_sum(const PastedCells& cells) {
  double sum = 0;
  int decimals = 0;
  for (std::size_t row = 0; row < cells.rows.size(); ++row) {
    const QString text = cells.rows[row].isEmpty() ? QString() : cells.rows[row].front();
    const auto value = text.isEmpty() ? Result<double>(0) : parse_number(text.toStdString(), DecimalMark::point_or_comma);
    if (!value) return false;
    decimals = std::max(decimals, decimals_of(text));
    if (row + 1 == cells.rows.size()) {
      constexpr double most_of_sum = 0.01;  // of a few grams a pan may be as near as that
      const double rounded = 0.5 * std::pow(10.0, -decimals) * static_cast<double>(row + 1);
      return sum > 0 && std::abs(*value - sum) <= std::min(rounded, most_of_sum * sum);
    }
    sum += *value;
  }
  return false;
}

std::string row_place(int row, int pan_row, const char* key) {
  const std::string name = key;
  if (row != pan_row) return "/retained/" + std::to_string(row) + "/" + name;
  if (name == "mass_g") return "/pan_g";
  if (name == "gross_g") return "/pan_gross_g";
  if (name == "tare_g") return "/pan_tare_g";
  if (name == "retained_l") return "/pan_l";
  return {};
}

/// A tenth of a percent is more than a prediction knows; in full the masses would pass for weighed.
QString rounded_prediction(const QString& grams_of_100) {
  const auto grams = parse_number(grams_of_100.toStdString(), DecimalMark::point_or_comma);
  return grams ? number_text(std::round(10 * *grams) / 10, 9) : grams_of_100;
}

/// The text of a further sample at `row`; the row after the last sieve is the pan.
void put(SieveSheet& sheet, std::size_t replicate, int row, const QString& text) {
  ReplicateText& sample = sheet.replicates[replicate];
  if (row >= static_cast<int>(sheet.rows.size())) {
    sample.pan = text;
    return;
  }
  sample.retained.resize(std::max(sample.retained.size(), static_cast<std::size_t>(row) + 1));
  sample.retained[static_cast<std::size_t>(row)] = text;
}

/// Which further sample a column holds; none for the others.
std::optional<std::size_t> replicate_of(int column) {
  if (column == SieveTableModel::second) return 0;
  if (column == SieveTableModel::third) return 1;
  return std::nullopt;
}

}  // namespace

SieveTableModel::SieveTableModel(Bench& bench, QObject* parent) : QAbstractTableModel(parent), bench_(bench) {
  shown_rows_ = rowCount();
  connect(&bench_, &Bench::changed, this, &SieveTableModel::refresh);
  connect(&bench_, &Bench::units_changed, this, &SieveTableModel::refresh);
  connect(&bench_, &Bench::current_component_changed, this, [this] {
    beginResetModel();
    endResetModel();
    shown_rows_ = rowCount();
  });
}

const ComponentSheet* SieveTableModel::component() const {
  const auto index = static_cast<std::size_t>(bench_.current_component());
  return index < bench_.state().components.size() ? &bench_.state().components[index] : nullptr;
}

const ComponentEvaluation* SieveTableModel::evaluation() const {
  const auto index = static_cast<std::size_t>(bench_.current_component());
  return index < bench_.evaluation().components.size() ? &bench_.evaluation().components[index] : nullptr;
}

int SieveTableModel::rowCount(const QModelIndex& parent) const {
  if (parent.isValid() || component() == nullptr) return 0;
  return static_cast<int>(component()->sheet.rows.size()) + 1;
}

int SieveTableModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : column_count; }

int SieveTableModel::pan_row() const { return rowCount() - 1; }

bool SieveTableModel::is_shown(int column) const {
  if (const auto replicate = replicate_of(column)) return component() != nullptr && *replicate < component()->sheet.replicates.size();
  const bool by_gross = component() != nullptr && component()->sheet.measure == Measure::gross_and_tare;
  return by_gross || (column != tare && column != net);
}

const PanText& SieveTableModel::pan_text(int row) const {
  if (component() == nullptr) return no_pan();
  if (row == pan_row()) return component()->sheet.pan;
  return component()->sheet.rows[static_cast<std::size_t>(row)];
}

Kind SieveTableModel::kind_of(int column) const {
  if (column == sieve) return Kind::aperture;
  return component() != nullptr && component()->sheet.measure == Measure::litres ? Kind::volume : Kind::mass;
}

QString SieveTableModel::replicate_text(int row, std::size_t replicate) const {
  const auto& replicates = component()->sheet.replicates;
  if (replicate >= replicates.size()) return {};
  if (row == pan_row()) return replicates[replicate].pan;
  const auto at = static_cast<std::size_t>(row);
  return at < replicates[replicate].retained.size() ? replicates[replicate].retained[at] : QString();
}

std::optional<double> SieveTableModel::passing_share(int row) const {
  const ComponentEvaluation* result = evaluation();
  const auto at = static_cast<std::size_t>(row);
  if (result == nullptr || !result->analysis || at >= result->analysis->sieves.size()) return std::nullopt;
  const SieveShare& share = result->analysis->sieves[at];
  if (result->pooled) {
    const auto& points = result->pooled->grading.points;
    const auto found = std::ranges::find(points, share.aperture, &GradingPoint::aperture);
    if (found != points.end()) return found->passing.value();
  }
  return share.passing.value();
}

QString SieveTableModel::row_name(int row) const {
  if (row == pan_row()) return tr("pan");
  const QString aperture = pan_text(row).aperture.trimmed();
  return aperture.isEmpty() ? tr("sieve %1").arg(row + 1) : aperture;
}

QString SieveTableModel::fault_text(int row, int column) const {
  const ComponentEvaluation* result = evaluation();
  if (result == nullptr) return {};
  std::vector<std::string> places;
  if (column == sieve) places = {row_place(row, pan_row(), "aperture_mm")};
  else if (column == retained) places = {row_place(row, pan_row(), "mass_g"), row_place(row, pan_row(), "gross_g"), row_place(row, pan_row(), "retained_l")};
  else if (column == tare) places = {row_place(row, pan_row(), "tare_g")};
  else if (const auto replicate = replicate_of(column)) {
    const std::string start = "/replicates/" + std::to_string(*replicate);
    // Its pans are the first sample's, and so are their tares.
    for (const char* key : {"mass_g", "gross_g", "tare_g", "retained_l"}) places.push_back(start + row_place(row, pan_row(), key));
  }
  QStringList sentences;
  for (const std::string& place : places) {
    if (place.empty()) continue;
    const auto [first, last] = result->faults.equal_range(place);
    for (auto fault = first; fault != last; ++fault) sentences << sentence_text(fault->second, bench_.units());
  }
  return semicolon_list(sentences);
}

QString SieveTableModel::row_checks(int row) const {
  QStringList sentences;
  for (const int column : {sieve, retained, tare, second, third}) {
    if (const QString text = fault_text(row, column); !text.isEmpty() && !sentences.contains(text)) sentences << text;
  }
  const ComponentEvaluation* result = evaluation();
  if (result == nullptr || !result->analysis) return semicolon_list(sentences);
  const auto index = static_cast<std::size_t>(row);
  for (const Note& note : result->analysis->notes) {
    const auto aperture = note.facts.find("aperture_mm");
    const bool of_this_row = row != pan_row() && note.where != "pan" && aperture != note.facts.end() && index < result->analysis->sieves.size() &&
                             std::get_if<double>(&aperture->second) != nullptr &&
                             std::get<double>(aperture->second) == in_mm(result->analysis->sieves[index].aperture);
    if (of_this_row || (row == pan_row() && note.where == "pan")) {
      Note plain = note;
      plain.where.clear();
      sentences << sentence_text(plain, bench_.units());
    }
  }
  return semicolon_list(sentences);
}

QVariant SieveTableModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || component() == nullptr || index.row() >= rowCount()) return {};
  const int row = index.row();
  const int column = index.column();
  const PanText& pan = pan_text(row);
  const UnitSystem units = bench_.units();
  const ComponentEvaluation* result = evaluation();
  if (role == Qt::DisplayRole || role == Qt::EditRole) {
    switch (column) {
      case sieve: return row == pan_row() ? tr("pan") : pan.aperture;
      case retained: return shown_text(component()->sheet.predicted ? rounded_prediction(pan.retained) : pan.retained, kind_of(column), units);
      case tare: return shown_text(pan.tare, kind_of(column), units);
      case second:
      case third: return shown_text(replicate_text(row, *replicate_of(column)), kind_of(column), units);
      case net: {
        const auto at = static_cast<std::size_t>(row);
        const bool known = result != nullptr && at < result->net.size() && result->net[at];
        return to_local(weighed_text(known ? result->net[at] : std::nullopt, units));
      }
      case passing: return row == pan_row() ? QString() : to_local(percent_text(passing_share(row)));
      case check: return row_checks(row);
      default: return {};
    }
  }
  if (role == Qt::ToolTipRole) {
    const QString text = column == check ? row_checks(row) : fault_text(row, column);
    return text.isEmpty() ? QVariant() : QVariant(text);
  }
  if (role == Qt::AccessibleTextRole || role == Qt::AccessibleDescriptionRole) {
    const QString value = data(index, Qt::DisplayRole).toString();
    const QString fault = fault_text(row, column);
    return tr("%1, %2: %3").arg(row_name(row), headerData(column, Qt::Horizontal, Qt::DisplayRole).toString(),
                                value.isEmpty() ? tr("empty") : value) + (fault.isEmpty() ? QString() : QStringLiteral(". ") + fault);
  }
  if (role == Qt::BackgroundRole && !fault_text(row, column).isEmpty()) return QBrush(current_colours().fault_fill);
  if (role == Qt::ForegroundRole) {
    if (column == check && !row_checks(row).isEmpty()) return QBrush(current_colours().fault);
    if (column == passing || column == net) return QBrush(current_colours().muted);
  }
  if (role == Qt::TextAlignmentRole) {
    return static_cast<int>((column == check ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  }
  return {};
}

QVariant SieveTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Vertical) return {};
  if (role == Qt::TextAlignmentRole) return static_cast<int>((section == check ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
  if (role != Qt::DisplayRole) return {};
  const QString unit = unit_of(kind_of(retained), bench_.units());
  const bool by_gross = component() != nullptr && component()->sheet.measure == Measure::gross_and_tare;
  switch (section) {
    case sieve: return tr("sieve, mm");
    case retained:
      if (component() != nullptr && component()->sheet.predicted) return tr("predicted, %1").arg(unit);
      return by_gross ? tr("gross, %1").arg(unit) : tr("stayed on, %1").arg(unit);
    case tare: return tr("tare, %1").arg(unit);
    case net: return tr("net");
    case second: return by_gross ? tr("gross %1, %2").arg(2).arg(unit) : tr("sample 2, %1").arg(unit);
    case third: return by_gross ? tr("gross %1, %2").arg(3).arg(unit) : tr("sample 3, %1").arg(unit);
    case passing: return tr("passing");
    case check: return tr("check");
    default: return {};
  }
}

Qt::ItemFlags SieveTableModel::flags(const QModelIndex& index) const {
  Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
  const bool typed = index.column() == sieve ? index.row() != pan_row() : index.column() == retained || index.column() == tare || replicate_of(index.column());
  if (typed) flags |= Qt::ItemIsEditable;
  return flags;
}

bool SieveTableModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || component() == nullptr || !(flags(index) & Qt::ItemIsEditable)) return false;
  const int row = index.row();
  const int column = index.column();
  const int current = bench_.current_component();
  const QString kept = kept_text(value.toString(), kind_of(column), bench_.units());
  if (shown_text(kept, kind_of(column), bench_.units()) == data(index, Qt::EditRole).toString()) return true;
  const QString what = column == sieve ? tr("sieve %1 of %2").arg(row_name(row), component()->name)
                       : replicate_of(column) ? tr("sample %1 on %2 of %3").arg(*replicate_of(column) + 2).arg(row_name(row), component()->name)
                       : row == pan_row() ? tr("pan mass of %1").arg(component()->name)
                                          : tr("mass on %1 of %2").arg(row_name(row), component()->name);
  bench_.edit(what, QStringLiteral("%1/%2/%3").arg(current).arg(row).arg(column), [&](BenchState& state) {
    SieveSheet& sheet = state.components[static_cast<std::size_t>(current)].sheet;
    if (const auto replicate = replicate_of(column)) {
      if (*replicate >= sheet.replicates.size()) return;
      put(sheet, *replicate, row, kept);
      return;
    }
    PanText& pan = row == pan_row() ? sheet.pan : sheet.rows[static_cast<std::size_t>(row)];
    (column == sieve ? pan.aperture : column == tare ? pan.tare : pan.retained) = kept;
  });
  return true;
}

QString SieveTableModel::paste(const QString& text, const QModelIndex& at) {
  if (component() == nullptr) return {};
  PastedCells cells = pasted_cells(text);
  if (cells.rows.empty()) return tr("There is nothing to paste: copy rows of numbers first.");
  const int current = bench_.current_component();
  const UnitSystem units = bench_.units();
  const bool by_gross = component()->sheet.measure == Measure::gross_and_tare;
  const int from_row = at.isValid() ? at.row() : 0;
  const bool into_sieves = at.isValid() && at.column() == sieve;
  const bool into_tare = at.isValid() && at.column() == tare;
  const auto into_sample = at.isValid() ? replicate_of(at.column()) : std::nullopt;
  const bool with_openings = !into_sample && (cells.columns >= (by_gross && !into_sieves ? 3 : 2) || (cells.columns == 2 && is_stack(cells)));
  const Kind kind = kind_of(retained);
  const auto cell = [&](std::size_t row, qsizetype column) {
    return column < cells.rows[row].size() ? cells.rows[row][column] : QString();
  };
  const auto room = static_cast<std::size_t>(std::max(0, rowCount() - from_row));
  if (!with_openings && !into_sieves && !into_tare && cells.columns == 1 && cells.rows.size() > room && ends_with_its_sum(cells)) {
    cells.below_pan << cell(cells.rows.size() - 1, 0);
    cells.rows.pop_back();
  }
  bool was_turned = false;
  bench_.edit(tr("paste into %1").arg(component()->name), {}, [&](BenchState& state) {
    SieveSheet& sheet = state.components[static_cast<std::size_t>(current)].sheet;
    drop_prediction(sheet, SieveSheet(sheet));
    if (into_sample) {
      for (std::size_t row = 0; row < cells.rows.size(); ++row) {
        if (*into_sample < sheet.replicates.size()) put(sheet, *into_sample, from_row + static_cast<int>(row), kept_text(cell(row, 0), kind, units));
      }
      return;
    }
    if (with_openings) {
      // Without a column of tares a sieve keeps its own.
      const bool same_pans = by_gross && cells.columns < 3;
      const std::vector<PanText> before = same_pans ? sheet.rows : std::vector<PanText>{};
      const QString pan_tare = same_pans ? sheet.pan.tare : QString();
      sheet.rows.clear();
      sheet.pan = {};
      // What was typed of further samples belonged to the stack that is gone.
      for (ReplicateText& sample : sheet.replicates) sample = {};
      for (std::size_t row = 0; row < cells.rows.size(); ++row) {
        PanText pan{cell(row, 0), kept_text(cell(row, 1), kind, units), by_gross ? kept_text(cell(row, 2), kind, units) : QString()};
        if (cells.is_pan(row)) {
          pan.aperture.clear();
          if (same_pans) pan.tare = pan_tare;
          sheet.pan = pan;
        } else {
          const auto same = std::ranges::find_if(before, [&](const PanText& was) { return is_same_opening(was.aperture, pan.aperture); });
          if (same != before.end()) pan.tare = same->tare;
          sheet.rows.push_back(pan);
        }
      }
      was_turned = is_fine_to_coarse(sheet.rows);
      if (was_turned) std::ranges::reverse(sheet.rows);
      return;
    }
    const auto rows_before = sheet.rows.size();
    for (std::size_t row = 0; row < cells.rows.size(); ++row) {
      const std::size_t target = static_cast<std::size_t>(from_row) + row;
      if (into_sieves) {
        if (cells.is_pan(row)) continue;
        if (target >= sheet.rows.size()) sheet.rows.emplace_back();
        sheet.rows[target].aperture = cell(row, 0);
        continue;
      }
      // The pan takes the value after the last sieve; what is longer than the stack gets sieves without an opening yet.
      if (target > rows_before) {
        sheet.rows.push_back(sheet.pan);
        sheet.rows.back().aperture.clear();
        sheet.pan = {};
      }
      PanText& pan = target >= rows_before ? sheet.pan : sheet.rows[target];
      if (into_tare) {
        pan.tare = kept_text(cell(row, 0), kind, units);
        continue;
      }
      pan.retained = kept_text(cell(row, 0), kind, units);
      if (by_gross && cells.columns == 2) pan.tare = kept_text(cell(row, 1), kind, units);
    }
  });
  QString pasted = tr("Pasted %n row(s).", nullptr, static_cast<int>(cells.rows.size()));
  if (was_turned) pasted = tr("%1 They came from fine to coarse and were turned round.").arg(pasted);
  return cells.below_pan.isEmpty() ? pasted : tr("%1 Left out below the pan: %2").arg(pasted, cells.below_pan.join(QStringLiteral("; ")));
}

void SieveTableModel::add_replicate() {
  if (component() == nullptr || component()->sheet.replicates.size() >= most_replicates) return;
  const int current = bench_.current_component();
  bench_.edit(tr("further sample of %1").arg(component()->name), {},
              [&](BenchState& state) {
                SieveSheet& sheet = state.components[static_cast<std::size_t>(current)].sheet;
                drop_prediction(sheet, SieveSheet(sheet));
                sheet.replicates.emplace_back();
              });
}

void SieveTableModel::remove_replicate() {
  if (component() == nullptr || component()->sheet.replicates.empty()) return;
  const int current = bench_.current_component();
  bench_.edit(tr("sample %1 of %2 removed").arg(component()->sheet.replicates.size() + 1).arg(component()->name), {},
              [&](BenchState& state) { state.components[static_cast<std::size_t>(current)].sheet.replicates.pop_back(); });
}

void SieveTableModel::insert_sieve(int row) {
  if (component() == nullptr) return;
  const int current = bench_.current_component();
  bench_.edit(tr("new sieve of %1").arg(component()->name), {}, [&](BenchState& state) {
    SieveSheet& sheet = state.components[static_cast<std::size_t>(current)].sheet;
    drop_prediction(sheet, SieveSheet(sheet));
    auto& rows = sheet.rows;
    const int above = std::clamp(row, 0, static_cast<int>(rows.size()));
    rows.insert(rows.begin() + above, PanText{});
    for (ReplicateText& sample : sheet.replicates) {
      if (above < static_cast<int>(sample.retained.size())) sample.retained.insert(sample.retained.begin() + above, QString());
    }
  });
}

void SieveTableModel::remove_sieve(int row) {
  if (component() == nullptr || row < 0 || row >= pan_row()) return;
  const int current = bench_.current_component();
  bench_.edit(tr("sieve %1 of %2 removed").arg(row_name(row), component()->name), {}, [&](BenchState& state) {
    SieveSheet& sheet = state.components[static_cast<std::size_t>(current)].sheet;
    drop_prediction(sheet, SieveSheet(sheet));
    sheet.rows.erase(sheet.rows.begin() + row);
    for (ReplicateText& sample : sheet.replicates) {
      if (row < static_cast<int>(sample.retained.size())) sample.retained.erase(sample.retained.begin() + row);
    }
  });
}

void SieveTableModel::refresh() {
  const int rows = rowCount();
  if (rows != shown_rows_) {
    beginResetModel();
    shown_rows_ = rows;
    endResetModel();
    return;
  }
  if (rows > 0) emit dataChanged(index(0, 0), index(rows - 1, column_count - 1));
  emit headerDataChanged(Qt::Horizontal, 0, column_count - 1);
}

}  // namespace gritwright::desktop
