#include "bags_page.hpp"

#include <QComboBox>
#include <QEvent>
#include <QFocusEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>
#include <string>
#include <utility>

#include "gritwright/formats/number.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "bins_tab.hpp"
#include "models/bag_material.hpp"
#include "models/stock_text.hpp"
#include "models/material_words.hpp"
#include "text.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/figure_panel.hpp"
#include "widgets/flow_line.hpp"
#include "widgets/folding_sides.hpp"
#include "widgets/gone_notice.hpp"
#include "widgets/list_fit.hpp"
#include "widgets/record_form.hpp"
#include "widgets/record_list_side.hpp"
#include "widgets/record_table.hpp"
#include "widgets/stock_line.hpp"

namespace gritwright::desktop {

namespace {

using Column = RecordListModel::Column;

std::string trimmed_utf8(const QString& text) { return text.trimmed().toStdString(); }

template <class Value, class Convert>
QString digits(const std::optional<Value>& value, Convert convert) {
  return value ? number_text(convert(*value), 9) : QString();
}

Result<double> number(const std::string& text) { return parse_number(text, DecimalMark::point_or_comma); }

void fill_with_materials(QComboBox& box, const Catalogue& catalogue) {
  box.setMinimumHeight(26);
  box.setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box.setMinimumContentsLength(8);
  for (const Material& material : catalogue.materials()) box.addItem(material_words(material.name), to_qt(material.name));
}

// The mix it last stood in before that day is filled in; the grower sees it in the next field and can mend it.
Reclaimed reclaimed_from(const Stored<Tree>& tree, const std::optional<std::string>& day) {
  Reclaimed from{tree.id, std::nullopt, day};
  for (const Repotting& repotting : tree.record.repottings) {
    if (!day || repotting.day < *day) from.mix = repotting.mix;
  }
  return from;
}

}  // namespace

BagsPage::BagsPage(RecordBook& book, const Catalogue& catalogue, QWidget* parent)
    : QWidget(parent),
      book_(book),
      list_(new RecordListModel(book, RecordKind::bag, {Column::id, Column::title, Column::day, Column::tests, Column::stock}, this)),
      fraction_list_(new RecordListModel(book, RecordKind::fraction, {Column::id, Column::title, Column::day, Column::stock}, this)),
      tabs_(new QTabWidget(this)),
      bins_(new BinsTab(book, catalogue, tabs_)),
      editor_(book, [this] { return current_; }, [](const QString& what, const QString& id) { return tr("%1 of bag %2").arg(what, id); }) {
  auto* page = new QVBoxLayout(this);
  page->setContentsMargins(8, 8, 8, 8);
  tabs_->setObjectName(QStringLiteral("bags_tabs"));
  tabs_->setAccessibleName(tr("Bags"));
  tabs_->setDocumentMode(true);
  page->addWidget(tabs_);
  auto* shelf = new QWidget(tabs_);
  auto* layout = new QHBoxLayout(shelf);
  layout->setContentsMargins(0, 8, 0, 0);
  auto* sides = new FoldingSides(QStringLiteral("bags_splitter"), shelf);
  sides->add(list_side(catalogue), 1);
  sides->add(form_side(catalogue));
  sides->set_sizes({800, 440});
  layout->addWidget(sides);
  tabs_->addTab(shelf, tr("Bags and fractions"));
  tabs_->addTab(bins_, tr("Bins and tubs"));
  editor_.set_label_of([this](const Stored<Bag>& was, const Bag& now, const QString& label) {
    return corrects_receipt(book_.workbook(), was, now) ? tr("%1, and what came into stock with it").arg(label) : label;
  });
  connect(&book_, &RecordBook::undone, form_, &RecordForm::forget_typing);
  connect(&book_, &RecordBook::changed, this, &BagsPage::refresh);
  connect(list_, &RecordListModel::modelReset, this, [this] { rows_moved_ = true; });
  connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &BagsPage::choose);
  refresh();
}

QWidget* BagsPage::list_tools(QWidget* side, const Catalogue& catalogue) {
  auto* tools = new FlowLine(side);
  find_ = new QLineEdit(side);
  find_->setObjectName(QStringLiteral("bags_find"));
  find_->setPlaceholderText(tr("bag, material or lot"));
  find_->setAccessibleName(tr("Find a bag"));
  find_->setMinimumHeight(26);
  material_ = new QComboBox(side);
  material_->setObjectName(QStringLiteral("bags_material"));
  material_->setAccessibleName(tr("Material of the bags to receive"));
  fill_with_materials(*material_, catalogue);
  auto* receive_button = new QPushButton(tr("&Receive bags"), side);
  receive_button->setObjectName(QStringLiteral("bags_receive"));
  receive_button->setAccessibleName(tr("Receive bags of this material"));
  receive_button->setMinimumHeight(28);
  connect(find_, &QLineEdit::textChanged, this, [this](const QString& words) {
    list_->set_words(words);
    fraction_list_->set_words(words);
    refresh();
  });
  connect(receive_button, &QPushButton::clicked, this, &BagsPage::receive);
  tools->add(tr("F&ind"), find_, 2, QStringLiteral("00000000"));
  // Beside its button: next to the list alone it would read as a filter.
  tools->keep_together();
  const auto width = [this](const QString& text) { return fontMetrics().horizontalAdvance(text); };
  QString longest;
  for (int i = 0; i < material_->count(); ++i) longest = std::max(longest, material_->itemText(i), [&](const QString& a, const QString& b) { return width(a) < width(b); });
  // Its letters may be narrower by a fifth, and beside them is an arrow.
  tools->add(tr("&Material to receive"), material_, 1, longest.left(longest.size() * 9 / 10));
  tools->add({}, receive_button);
  return tools;
}

QWidget* BagsPage::list_side(const Catalogue& catalogue) {
  auto* side = new QWidget(this);
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  layout->addWidget(list_tools(side, catalogue));
  empty_ = new QLabel(side);
  empty_->setWordWrap(true);
  empty_->setProperty("role", "muted");
  layout->addWidget(empty_);
  table_ = new QTableView(side);
  table_->setObjectName(QStringLiteral("bags_table"));
  table_->setAccessibleName(tr("Bags"));
  table_->setModel(list_);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setDragEnabled(true);
  table_->setDragDropMode(QAbstractItemView::DragOnly);
  table_->setContextMenuPolicy(Qt::ActionsContextMenu);
  show_as_record_list(*table_);
  new ListFit(*table_, {{3, QStringLiteral("none yet"), true}, {2, widest_day(), true}, {0, QStringLiteral("WW-000")}, {4, QStringLiteral("00.0\u00a0kg dry")}});
  connect(table_, &QTableView::activated, this, &BagsPage::grade);
  layout->addWidget(table_, 1);
  add_fractions(side, *layout);
  fit_columns();
  return side;
}

// Below the bags what was screened out of them: it goes into a mix as a bag does.
void BagsPage::add_fractions(QWidget* side, QLayout& layout) {
  fraction_heading_ = new QLabel(tr("Fractions on the shelf"), side);
  fraction_heading_->setProperty("role", "heading");
  fraction_table_ = new QTableView(side);
  fraction_table_->setObjectName(QStringLiteral("fraction_list"));
  fraction_table_->setAccessibleName(tr("Fractions on the shelf"));
  fraction_table_->setAccessibleDescription(tr("Enter puts the fraction into the mix."));
  fraction_table_->setModel(fraction_list_);
  show_as_record_list(*fraction_table_);
  fraction_table_->setSelectionMode(QAbstractItemView::SingleSelection);
  new ListFit(*fraction_table_, {{2, widest_day(), true}, {0, QStringLiteral("WW-000")}, {3, QStringLiteral("00.0\u00a0kg dry")}});
  fraction_table_->setDragEnabled(true);
  fraction_table_->setDragDropMode(QAbstractItemView::DragOnly);
  // Not the focus: that is in the menu bar when a menu asks.
  connect(fraction_table_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] { use_fraction(true); });
  connect(fraction_table_, &QTableView::pressed, this, [this] { use_fraction(true); });
  connect(table_, &QTableView::pressed, this, [this] { use_fraction(false); });
  for (QTableView* list : {table_, fraction_table_}) list->installEventFilter(this);
  connect(fraction_table_, &QTableView::activated, this, [this] {
    fraction_used_last_ = true;
    emit mix_wanted(chosen_grain());
  });
  layout.addWidget(fraction_heading_);
  layout.addWidget(fraction_table_);
  connect(fraction_table_->verticalHeader(), &QHeaderView::sectionResized, this, &BagsPage::fit_fractions);
  connect(fraction_table_->verticalHeader(), &QHeaderView::sectionCountChanged, this, &BagsPage::fit_fractions);
}

// What few fractions leave is the bags'.
void BagsPage::fit_fractions() {
  const int rows = fraction_table_->verticalHeader()->length() + fraction_table_->horizontalHeader()->height() + fraction_table_->horizontalScrollBar()->sizeHint().height();
  fraction_table_->setMaximumHeight(std::max(fraction_table_->minimumHeight(), rows + 2 * fraction_table_->frameWidth()));
}

// What commands act upon is the one row that is marked.
void BagsPage::use_fraction(bool fraction) {
  fraction_used_last_ = fraction;
  QTableView& used = fraction ? *fraction_table_ : *table_;
  (fraction ? *table_ : *fraction_table_).clearSelection();
  if (const QModelIndex row = used.currentIndex(); row.isValid() && !used.selectionModel()->isSelected(row))
    used.selectionModel()->select(row, QItemSelectionModel::Select | QItemSelectionModel::Rows);
  if (fraction) show_bag_of_fraction();
  show_stock_line();
}

// What stands beside a fraction is the bag that it was screened out of.
void BagsPage::show_bag_of_fraction() {
  if (!fraction_table_->currentIndex().isValid()) return;
  const auto fraction = book_.workbook().find(Id<Fraction>{fraction_list_->ref_at(fraction_table_->currentIndex().row()).id});
  if (!fraction || fraction->record.source.kind != RecordKind::bag) return;
  const QString bag = to_qt(fraction->record.source.id);
  if (bag == current_ || !book_.workbook().find(Id<Bag>{fraction->record.source.id})) return;
  gone_->leave();
  current_ = bag;
  book_.end_typing();
  form_->refresh(true);
  refresh();
}

bool BagsPage::eventFilter(QObject* watched, QEvent* event) {
  // Rows that all change alike tell nobody.
  if (event->type() == QEvent::Resize && watched == fraction_table_) fit_fractions();
  // Back from a menu it is where it was.
  if (event->type() == QEvent::FocusIn && static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason && static_cast<QFocusEvent*>(event)->reason() != Qt::MenuBarFocusReason && (watched == table_ || (watched == fraction_table_ && fraction_table_->currentIndex().isValid())))
    use_fraction(watched == fraction_table_);
  return QWidget::eventFilter(watched, event);
}

QString BagsPage::chosen_grain() const {
  if (tabs_->currentWidget() == bins_) return bins_->chosen_grain();
  const bool of_fractions = fraction_used_last_ && fraction_table_->currentIndex().isValid();
  return of_fractions ? to_qt(fraction_list_->ref_at(fraction_table_->currentIndex().row()).id) : current_;
}

void BagsPage::show_stock_line() {
  const QString id = chosen_grain();
  if (id.isEmpty() || tabs_->currentWidget() == bins_) return;
  stock_line_->set_holder(RecordRef{id == current_ ? RecordKind::bag : RecordKind::fraction, id.toStdString()});
}

QWidget* BagsPage::form_side(const Catalogue& catalogue) {
  auto* details = new QFrame(this);
  details_ = details;
  details->setObjectName(QStringLiteral("card"));
  auto* card = new QVBoxLayout(details);
  card->setContentsMargins(10, 8, 10, 8);
  card->setSpacing(8);
  title_ = new QLabel(details);
  title_->setObjectName(QStringLiteral("bag_title"));
  title_->setProperty("role", "heading");
  title_->setWordWrap(true);
  for (const auto& [label, name] : {std::pair{&tested_, "bag_tested"}, {&not_in_stock_, "bag_not_in_stock"}}) {
    *label = new QLabel(details);
    (*label)->setObjectName(QLatin1String(name));
    (*label)->setWordWrap(true);
  }
  stock_ = new FigurePanel(details);
  form_ = new RecordForm(details);
  add_arrival_rows(catalogue);
  add_grain_rows();
  add_paper_rows();
  add_reclaimed_rows();
  connect(form_, &RecordForm::typing_ended, this, [this] { book_.end_typing(); });
  gone_ = new GoneNotice(book_, QStringLiteral("bag"), {form_}, {}, details);
  stock_line_ = new StockLine(book_, catalogue, QStringLiteral("bag"), details);
  connect(gone_, &GoneNotice::let_go, this, &BagsPage::refresh);
  card->addWidget(title_);
  card->addWidget(gone_);
  card->addWidget(tested_);
  card->addWidget(form_buttons(details));
  card->addWidget(form_);
  card->addWidget(not_in_stock_);
  card->addWidget(take_in_, 0, Qt::AlignLeft);
  card->addWidget(stock_);
  card->addWidget(stock_line_);
  card->addStretch(1);
  return form_column_ = new ColumnScroll(details, this);
}

void BagsPage::set_material(const std::string& material) {
  const auto stored = editor_.record();
  if (!stored || stored->record.material == material) return;
  if (has_grain_elsewhere(book_.workbook(), ref_to(stored->id))) {
    refresh();
    return emit book_.told(tr("Bag %1 keeps its material, as a mix, a fraction or a bin has grain of it: receive the bag anew, and count 0 left of this one.").arg(current_));
  }
  auto corrected = corrected_material(book_.workbook(), *stored, material);
  if (corrected && book_.apply(std::move(*corrected))) emit book_.told(tr("Bag %1 is %2 now, on its sieve tests and on the bench too.").arg(current_, material_words(material)));
}

QWidget* BagsPage::form_buttons(QWidget* details) {
  auto* grade_button = new QPushButton(tr("Grade thi&s bag"), details);
  grade_button->setObjectName(QStringLiteral("bag_grade"));
  grade_button->setAccessibleName(tr("Grade this bag"));
  grade_button->setMinimumHeight(28);
  take_in_ = new QPushButton(tr("&Take into stock"), details);
  take_in_->setObjectName(QStringLiteral("bag_take_in"));
  take_in_->setAccessibleName(tr("Take into stock"));
  take_in_->setMinimumHeight(28);
  // It stands with the bag, also where one of its fractions is marked.
  connect(grade_button, &QPushButton::clicked, this, [this] {
    if (!current_.isEmpty()) emit grade_wanted(current_);
  });
  connect(take_in_, &QPushButton::clicked, this, &BagsPage::take_into_stock);
  auto* measure_button = new QPushButton(tr("Meas&ure..."), details);
  measure_button->setObjectName(QStringLiteral("bag_measure"));
  measure_button->setAccessibleName(tr("Measure this bag: litre weight, grain density, water, crumbling"));
  measure_button->setMinimumHeight(28);
  connect(measure_button, &QPushButton::clicked, this, [this] { emit measure_wanted(current_); });
  auto* buttons = new FlowLine(details);
  for (QPushButton* button : {grade_button, measure_button}) buttons->add({}, button);
  return buttons;
}

void BagsPage::add_arrival_rows(const Catalogue& catalogue) {
  own_material_ = new QComboBox(form_);
  own_material_->setObjectName(QStringLiteral("bag_material"));
  own_material_->setAccessibleName(tr("What is in the bag"));
  fill_with_materials(*own_material_, catalogue);
  connect(own_material_, &QComboBox::activated, this, [this](int index) { set_material(own_material_->itemData(index).toString().toStdString()); });
  form_->add(tr("Material"), own_material_);
  form_->add({QStringLiteral("bag_lot"), tr("&Lot"), Kind::words, tr("as marked on the bag"), editor_.shown([](const Bag& b) { return to_qt(b.lot); }),
              editor_.words(tr("lot"), [](Bag& b, std::string text) { b.lot = std::move(text); })});
  form_->add({QStringLiteral("bag_count"), tr("&Number of bags"), Kind::number, tr("of this lot"), editor_.shown([](const Bag& b) { return QString::number(b.count); }),
              editor_.taken(tr("number"), number, [](Bag& b, std::optional<double> value) { b.count = static_cast<int>(std::min(value.value_or(0), 1e6)); })});
  form_->add({QStringLiteral("bag_size_from"), tr("&Printed size, from"), Kind::aperture, tr("provisional until the lot is sieved"),
              editor_.shown([this](const Bag& b) {
                if (b.printed_size) return number_text(in_mm(b.printed_size->from), 9);
                return size_from_.contains(current_) ? number_text(in_mm(size_from_.at(current_)), 9) : QString();
              }),
              [this](const QString& text) { return set_size_from(text); }});
  form_->add({QStringLiteral("bag_size_to"), tr("Printed size, to"), Kind::aperture, tr("the coarse end"),
              editor_.shown([](const Bag& b) { return b.printed_size ? number_text(in_mm(b.printed_size->to), 9) : QString(); }),
              [this](const QString& text) { return set_size_to(text); },
              {}, {}, {}, [this] { return typed_size_from() ? Problems{Problem{"number.missing", {}, {}}} : Problems{}; }});
  form_->add({QStringLiteral("bag_volume"), tr("Litres in one b&ag"), Kind::volume, tr("loose, as printed or measured"),
              editor_.shown([](const Bag& b) { return digits(b.volume, [](LooseVolume v) { return in_l(v); }); }),
              editor_.taken(tr("volume"), [](const std::string& text) { return parse_volume(text, VolumeUnit::litre); },
                    [](Bag& b, std::optional<Volume> value) { b.volume = value ? std::optional(LooseVolume(*value)) : std::nullopt; })});
  form_->add({QStringLiteral("bag_mass"), tr("Mass of one bag"), Kind::mass, tr("as bagged; kg can be typed"),
              editor_.shown([](const Bag& b) { return digits(b.mass_as_bagged, [](Mass m) { return in_g(m); }); }),
              editor_.taken(tr("mass"), [](const std::string& text) { return parse_mass(text, MassUnit::gram); },
                    [](Bag& b, std::optional<WrittenMass> value) { b.mass_as_bagged = value ? std::optional(value->mass) : std::nullopt; })});
}

void BagsPage::add_grain_rows() {
  basis_ = new QComboBox(form_);
  basis_->setObjectName(QStringLiteral("bag_moisture_basis"));
  basis_->setAccessibleName(tr("The bag was weighed"));
  for (const auto& [basis, text] : {std::pair{MoistureBasis::as_bagged, tr("as bagged")}, {MoistureBasis::air_dry, tr("air-dry")}, {MoistureBasis::oven_dry, tr("oven-dry")}}) {
    basis_->addItem(text, static_cast<int>(basis));
  }
  connect(basis_, &QComboBox::activated, this, [this](int index) {
    editor_.save(tr("weighing"), [&](Bag& b) { b.moisture_basis = static_cast<MoistureBasis>(basis_->itemData(index).toInt()); });
  });
  form_->add(tr("Weighed"), basis_);
  form_->add({QStringLiteral("bag_moisture"), tr("Moisture"), Kind::percent, tr("water per dry mass, as bagged"),
              editor_.shown([](const Bag& b) { return b.moisture ? measured_text(b.moisture->value() * 100) : QString(); }),
              editor_.taken(tr("moisture"), parse_percent,
                    [](Bag& b, std::optional<double> value) { b.moisture = value ? std::optional(Moisture(*value)) : std::nullopt; })});
  form_->add({QStringLiteral("bag_bulk_density"), tr("Litre weight, &dry"), Kind::density, tr("measured on this lot"),
              editor_.shown([](const Bag& b) { return b.bulk_density ? measured_text(in_g_l(*b.bulk_density)) : QString(); }),
              editor_.taken(tr("litre weight"), parse_density, [](Bag& b, std::optional<double> value) { b.bulk_density = value ? std::optional(bulk_g_l(*value)) : std::nullopt; })});
  form_->add({QStringLiteral("bag_particle_density"), tr("Grain densit&y"), Kind::density, tr("measured on this lot"),
              editor_.shown([](const Bag& b) { return b.particle_density ? measured_text(in_g_l(*b.particle_density)) : QString(); }),
              editor_.taken(tr("grain density"), parse_density,
                    [](Bag& b, std::optional<double> value) { b.particle_density = value ? std::optional(particle_g_l(*value)) : std::nullopt; })});
}

void BagsPage::add_paper_rows() {
  form_->add({QStringLiteral("bag_price"), tr("Price of one &bag"), Kind::number, tr("in your money"),
              editor_.shown([](const Bag& b) { return b.price ? number_text(b.price->amount, 9) : QString(); }),
              editor_.taken(tr("price"), number, [this](Bag& b, std::optional<double> value) {
                std::string& currency = currency_[current_];
                if (b.price) currency = b.price->currency;
                if (!value) return b.price.reset();
                b.price = Price{*value, currency};
              })});
  form_->add({QStringLiteral("bag_currency"), tr("Currency"), Kind::words, tr("your word for it; after the price"),
              editor_.shown([this](const Bag& b) { return to_qt(b.price ? b.price->currency : currency_[current_]); }), [this](const QString& text) {
                currency_[current_] = trimmed_utf8(text);
                return editor_.save(tr("currency"), [&](Bag& b) {
                  if (b.price) b.price->currency = trimmed_utf8(text);
                });
              }});
  form_->add({QStringLiteral("bag_received"), tr("Received on"), Kind::words, tr("a day like %1").arg(example_day()),
              editor_.shown([](const Bag& b) { return day_text(b.received.value_or("")); }), [this](const QString& text) {
                return editor_.save(tr("day"), [&](Bag& b) { b.received = text.trimmed().isEmpty() ? std::nullopt : std::optional(typed_day(text)); });
              }});
  form_->add({QStringLiteral("bag_note"), tr("Note"), Kind::words, tr("anything worth knowing next year"), editor_.shown([](const Bag& b) { return to_qt(b.note); }),
              editor_.words(tr("note"), [](Bag& b, std::string text) { b.note = std::move(text); })});
}

void BagsPage::add_reclaimed_rows() {
  form_->add({QStringLiteral("bag_reclaimed_tree"), tr("Taken back from"), Kind::words, tr("a tree, like TR-06; empty if bought"),
              editor_.shown([](const Bag& b) { return b.reclaimed ? to_qt(b.reclaimed->tree.text) : QString(); }), [this](const QString& text) { return set_reclaimed_tree(text); }});
  const auto is_reclaimed = [this] {
    const auto stored = editor_.record();
    return stored && stored->record.reclaimed;
  };
  form_->add({QStringLiteral("bag_reclaimed_mix"), tr("It stood in"), Kind::words, tr("the mix it was, like MX-01/1"),
              editor_.shown([](const Bag& b) { return b.reclaimed && b.reclaimed->mix ? to_qt(b.reclaimed->mix->text) : QString(); }),
              [this](const QString& text) { return set_reclaimed_mix(text); }, is_reclaimed});
  form_->add({QStringLiteral("bag_reclaimed_day"), tr("Taken back on"), Kind::words, tr("a day like %1").arg(example_day()),
              editor_.shown([](const Bag& b) { return b.reclaimed ? day_text(b.reclaimed->day.value_or("")) : QString(); }),
              [this](const QString& text) {
                return editor_.save(tr("day"), [&](Bag& b) {
                  if (b.reclaimed) b.reclaimed->day = text.trimmed().isEmpty() ? std::nullopt : std::optional(typed_day(text));
                });
              },
              is_reclaimed});
}

std::optional<Aperture> BagsPage::typed_size_from() const {
  if (const auto stored = editor_.record(); !stored || stored->record.printed_size) return std::nullopt;
  const auto typed = size_from_.find(current_);
  return typed != size_from_.end() ? std::optional(typed->second) : std::nullopt;
}

// One end is no size: without the other it waits here, and the other says that it is missing.
Problems BagsPage::set_size_from(const QString& text) {
  const auto stored = editor_.record();
  if (!stored) return {};
  std::optional<Aperture> from;
  if (!text.trimmed().isEmpty()) {
    const auto read = parse_aperture(trimmed_utf8(text));
    if (!read) return read.problems();
    from = *read;
  }
  // Without a fine end it is up to the coarse one, which whoever types the other anew did not mean to lose.
  if (stored->record.printed_size) return editor_.save(tr("printed size"), [&](Bag& b) { b.printed_size->from = from.value_or(Aperture{}); });
  if (from) size_from_.insert_or_assign(current_, *from);
  else size_from_.erase(current_);
  Problems problems = editor_.save(tr("printed size"), [](Bag& b) { b.printed_size.reset(); });
  form_->refresh(false);
  return problems;
}

Problems BagsPage::set_size_to(const QString& text) {
  const auto stored = editor_.record();
  if (!stored) return {};
  const auto& size = stored->record.printed_size;
  if (text.trimmed().isEmpty()) {
    if (size && size->from > Aperture{}) size_from_.insert_or_assign(current_, size->from);
    return editor_.save(tr("printed size"), [](Bag& b) { b.printed_size.reset(); });
  }
  const auto to = parse_aperture(trimmed_utf8(text));
  if (!to) return to.problems();
  // Up to a size is a size too: dust and all.
  const Aperture from = size ? size->from : typed_size_from().value_or(Aperture{});
  Problems problems = editor_.save(tr("printed size"), [&](Bag& b) { b.printed_size = SizeBand{from, *to}; });
  // A fine end that was refused as above the coarse one may be below it now.
  auto* const fine = form_->findChild<QLineEdit*>(QStringLiteral("bag_size_from"));
  if (problems.empty() && fine->text() != shown_text(number_text(in_mm(from), 9), Kind::aperture, units_)) emit fine->textEdited(fine->text());
  return problems;
}

Problems BagsPage::set_reclaimed_tree(const QString& text) {
  if (text.trimmed().isEmpty()) return editor_.save(tr("tree"), [](Bag& b) { b.reclaimed.reset(); });
  const auto tree = book_.workbook().find(Id<Tree>{trimmed_utf8(text)});
  if (!tree) return {Problem{"workbook.not-there", {}, {{"kind", std::string("tree")}, {"id", trimmed_utf8(text)}}}};
  return editor_.save(tr("tree"), [&](Bag& b) {
    if (b.reclaimed && b.reclaimed->tree == tree->id) return;
    b.reclaimed = reclaimed_from(*tree, b.reclaimed ? b.reclaimed->day : b.received);
  });
}

Problems BagsPage::set_reclaimed_mix(const QString& text) {
  std::optional<Id<MixVersion>> mix;
  if (!text.trimmed().isEmpty()) {
    const auto found = book_.workbook().find(Id<MixVersion>{trimmed_utf8(text)});
    if (!found) return {Problem{"workbook.not-there", {}, {{"kind", std::string("mix")}, {"id", trimmed_utf8(text)}}}};
    mix = found->id;
  }
  return editor_.save(tr("mix"), [&](Bag& b) {
    if (b.reclaimed) b.reclaimed->mix = mix;
  });
}

void BagsPage::fit_columns() {
  if (fraction_table_ == nullptr) return;
  const int line = std::max(26, fontMetrics().height() + 8);
  fraction_table_->setFixedHeight(4 * line + fraction_table_->horizontalHeader()->sizeHint().height());
}

void BagsPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  list_->set_in_sight(true);
  fraction_list_->set_in_sight(true);
  refresh();
}

void BagsPage::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  list_->set_in_sight(false);
  fraction_list_->set_in_sight(false);
}

void BagsPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fit_columns();
}

void BagsPage::set_units(UnitSystem units) {
  units_ = units;
  list_->set_units(units);
  fraction_list_->set_units(units);
  form_->set_units(units);
  stock_line_->set_units(units);
  bins_->set_units(units);
  refresh();
}

void BagsPage::find() {
  if (tabs_->currentWidget() == bins_) return bins_->list().find();
  find_->setFocus();
  find_->selectAll();
}

Bag BagsPage::bag_of_today() const {
  Bag fresh;
  fresh.material = material_->currentData().toString().toStdString();
  fresh.received = today();
  return fresh;
}

bool BagsPage::add_bag(const Bag& fresh) {
  show_bags();
  const QString id = to_qt(book_.workbook().suggest_id(RecordKind::bag, fresh.material));
  find_->clear();
  const RecordRef ref{RecordKind::bag, id.toStdString()};
  if (book_.add(fresh, tr("bag %1").arg(id), id, event_about(ref, tr("Received bag %1").arg(id), today())).isEmpty()) return false;
  show_bag(id);
  return true;
}

void BagsPage::receive() {
  if (add_bag(bag_of_today())) form_->findChild<QLineEdit*>(QStringLiteral("bag_lot"))->setFocus();
}

void BagsPage::take_back(const QString& tree) {
  Bag fresh = bag_of_today();
  fresh.lot = tr("taken back").toStdString();
  const auto from = tree.isEmpty() ? std::nullopt : book_.workbook().find(Id<Tree>{tree.toStdString()});
  if (from) fresh.reclaimed = reclaimed_from(*from, fresh.received);
  if (add_bag(fresh)) form_->findChild<QLineEdit*>(from ? QStringLiteral("bag_lot") : QStringLiteral("bag_reclaimed_tree"))->setFocus();
}

void BagsPage::show_bags() { tabs_->setCurrentIndex(0); }
void BagsPage::show_bins() { tabs_->setCurrentWidget(bins_); }

void BagsPage::remove() {
  if (tabs_->currentWidget() == bins_) return bins_->remove_bin();
  const auto stored = editor_.record();
  if (!stored) return;
  if (chosen_grain() != current_) return emit book_.told(tr("Fraction %1 is marked: choose the bag in its list to remove it.").arg(chosen_grain()));
  if (book_.workbook().is_used(ref_to(stored->id))) {
    emit book_.told(tr("Bag %1 stays: tests, mixes or the stock name it. Count 0 left where it is used up.").arg(current_));
    return;
  }
  form_->drop_typing();
  book_.remove(*stored, tr("bag %1 removed").arg(current_));
}

void BagsPage::take_into_stock() {
  show_bags();
  const auto stored = editor_.record();
  if (!stored) return;
  const auto entry = arrival_of(ref_to(stored->id), stored->record, stored->record.received.value_or(today()));
  if (!entry) return emit book_.told(not_in_stock_->text());
  if (book_.workbook().stock_of(ref_to(stored->id))) return emit book_.told(tr("Bag %1 is in stock already.").arg(current_));
  const QString label = tr("bag %1 taken into stock").arg(current_);
  if (!book_.add(*entry, label, {}, event_about(ref_to(stored->id), label, today())).isEmpty()) emit book_.told(tr("In stock now: %1 of bag %2.").arg(to_local(mass_text(entry->change, units_)), current_));
}

void BagsPage::grade() {
  const QString grain = tabs_->currentWidget() == bins_ ? bins_->list().current() : chosen_grain();
  if (!grain.isEmpty()) emit grade_wanted(grain);
}

void BagsPage::show_bag(const QString& id) {
  show_bags();
  if (list_->row_of(id) < 0) find_->clear();
  const int row = list_->row_of(id);
  if (row < 0) return;
  table_->setCurrentIndex(list_->index(row, 0));
  choose();
}

void BagsPage::show_fraction(const QString& id) {
  show_bags();
  if (fraction_list_->row_of(id) < 0) find_->clear();
  const int row = fraction_list_->row_of(id);
  if (row < 0) return;
  fraction_table_->setCurrentIndex(fraction_list_->index(row, 0));
  fraction_table_->setFocus();
  fraction_used_last_ = true;
  show_stock_line();
}

void BagsPage::choose() {
  const QModelIndex index = table_->currentIndex();
  const QString chosen = index.isValid() ? to_qt(list_->ref_at(index.row()).id) : QString();
  // Its form is there already, but the line that books stock may be a fraction's.
  use_fraction(false);
  if (chosen == current_ || chosen.isEmpty()) return;
  gone_->leave();
  current_ = chosen;
  book_.end_typing();
  form_->refresh(true);
  refresh();
  // Another bag is read from its name on.
  if (!form_->isAncestorOf(focusWidget())) form_column_->verticalScrollBar()->setValue(0);
}

// After the list was read anew the bag on screen keeps its row; if it is gone, the first in sight takes its place. A bag that is being typed
// into stays even where what is typed takes it out of what was searched for: the next key must not go into another bag.
void BagsPage::keep_selection() {
  if (!std::exchange(rows_moved_, false) && !current_.isEmpty()) return;
  if (const int row = list_->row_of(current_); row >= 0) {
    if (table_->currentIndex().row() == row) return;
    if (!fraction_used_last_) return table_->setCurrentIndex(list_->index(row, 0));
    // The mark stays on the fraction.
    const QSignalBlocker quiet(table_->selectionModel());
    table_->selectionModel()->setCurrentIndex(list_->index(row, 0), QItemSelectionModel::NoUpdate);
    return;
  }
  if (form_->isAncestorOf(focusWidget()) && editor_.record()) {
    rows_moved_ = true;
    return;
  }
  if (gone_->hold({RecordKind::bag, current_.toStdString()})) {
    rows_moved_ = true;
    return;
  }
  current_.clear();
  // A list that has not heard yet of what another window deleted names bags that are not there.
  if (list_->rowCount() == 0 || list_->row_of(to_qt(list_->ref_at(0).id)) < 0) return;
  table_->setCurrentIndex(list_->index(0, 0));
  choose();
}

void BagsPage::refresh() {
  if (!isVisible()) return;
  keep_selection();
  const bool any_fractions = fraction_list_->rowCount() > 0;
  empty_->setVisible(list_->rowCount() == 0);
  empty_->setText(find_->text().trimmed().isEmpty()
                      ? tr("No bags yet. Choose a material and receive the first ones: the lot, how many, their litres or mass. Grading them is one click from here.")
                  : any_fractions ? tr("No bag has these words, but fractions below have.")
                                  : tr("No bag has these words."));
  fraction_heading_->setVisible(any_fractions);
  fraction_table_->setVisible(any_fractions);
  const RecordEditor<Bag>::ReadOnce once(editor_);
  const auto stored = editor_.record();
  details_->setVisible(stored || gone_->is_holding());
  if (!stored) return;
  gone_->is_back();
  form_->refresh(false);
  title_->setText(comma_list({current_, material_words(stored->record.material)}));
  own_material_->setCurrentIndex(own_material_->findData(to_qt(stored->record.material)));
  basis_->setCurrentIndex(basis_->findData(static_cast<int>(stored->record.moisture_basis)));
  refresh_stock(*stored);
}

void BagsPage::refresh_stock(const Stored<Bag>& stored) {
  const auto mass = dry_mass_received(stored.record);
  const auto stock = book_.workbook().stock_of(ref_to(stored.id));
  take_in_->setEnabled(mass && !stock);
  take_in_->setVisible(!stock);
  show_stock_line();
  tested_->setText(tested_text(book_.workbook(), ref_to(stored.id)));
  stock_->show_group(stock_figures(book_.workbook(), ref_to(stored.id), units_));
  not_in_stock_->setVisible(!stock);
  not_in_stock_->setText(mass ? tr("%1 of dry grain came; take it into stock to follow what is left.").arg(to_local(mass_text(mass, units_)))
                         : stored.record.mass_as_bagged
                              ? tr("The stock counts dry grain: type the moisture, or choose oven-dry for how the bag was weighed, to take it into stock.")
                              : tr("Type the mass of a bag, or its litres and the litre weight, to take it into stock."));
}

}  // namespace gritwright::desktop
