#include "bins_tab.hpp"

#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "gritwright/formats/typed_quantity.hpp"
#include "gritwright/workbook/stock_ledger.hpp"
#include "models/grain_trace.hpp"
#include "models/material_words.hpp"
#include "models/stock_text.hpp"
#include "text.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/figure_panel.hpp"
#include "widgets/folding_sides.hpp"
#include "widgets/gone_notice.hpp"
#include "widgets/record_form.hpp"
#include "widgets/record_list_side.hpp"
#include "widgets/stock_line.hpp"
#include "widgets/traced_table.hpp"

namespace gritwright::desktop {

namespace {

constexpr int least_height_of_tubs = 90;
constexpr int least_height_of_contents = 150;

QPushButton* bin_button(QWidget* parent, const char* object_name, const QString& text) {
  auto* button = new QPushButton(text, parent);
  button->setObjectName(QString::fromLatin1(object_name));
  QString name = text;
  button->setAccessibleName(name.remove(u'&'));
  button->setMinimumHeight(28);
  return button;
}

/// What may still be in what is taken out today.
QString may_contain_sentence(const Bin& bin) {
  QStringList parts;
  for (const BinContent& content : bin.contents) {
    if (content.emptied) continue;
    const QString id = to_qt(content.source.id);
    parts << (content.day ? BinsTab::tr("%1 (since %2)").arg(id, day_text(*content.day)) : id);
  }
  if (parts.isEmpty()) return BinsTab::tr("Nothing is noted to lie in it now.");
  if (parts.size() == 1) return BinsTab::tr("It holds %1.").arg(parts.front());
  return BinsTab::tr("What is taken out may contain each of: %1.").arg(comma_list(parts));
}

}  // namespace

BinsTab::BinsTab(RecordBook& book, const Catalogue& catalogue, QWidget* parent)
    : QWidget(parent),
      book_(book),
      editor_(book, [this] { return list_ == nullptr ? QString() : list_->current(); }, [](const QString& what, const QString& id) { return tr("%1 of bin %2").arg(what, id); }) {
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 8, 0, 0);
  auto* sides = new FoldingSides(QStringLiteral("bins_splitter"), this);
  sides->add(list_side(catalogue));
  sides->add(new ColumnScroll(bin_side(catalogue), sides), 1);
  sides->set_sizes({420, 820});
  layout->addWidget(sides);
  connect(list_, &RecordListSide::chosen, this, &BinsTab::chosen);
  list_->set_hold([this](const QString& id) { return gone_->hold({RecordKind::bin, id.toStdString()}); });
  connect(gone_, &GoneNotice::let_go, list_, &RecordListSide::look_again);
  connect(&book_, &RecordBook::undone, form_, &RecordForm::forget_typing);
  connect(&book_, &RecordBook::changed, this, &BinsTab::refresh);
  form_->refresh(true);
  refresh();
}

QWidget* BinsTab::list_side(const Catalogue& catalogue) {
  auto* side = new QWidget(this);
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  const RecordListSide::Names names{QStringLiteral("bins"), tr("Bins and leftover tubs"), tr("bin by number, name or material"),
                                    tr("No bins yet. A bin or leftover tub holds several lots; what is taken out of it may contain each of them."), tr("left"), QStringLiteral("00.0\u00a0kg dry"), true};
  list_ = new RecordListSide(book_, RecordKind::bin, names, [this](const RecordLine& line) { return list_text(line); }, side);
  connect(list_->add_button(QStringLiteral("bins_add"), tr("Add a &bin or tub")), &QPushButton::clicked, this, &BinsTab::add_bin);
  layout->addWidget(list_, 1);
  tubs_side_ = new QWidget(side);
  auto* tubs = new QVBoxLayout(tubs_side_);
  tubs->setContentsMargins(0, 0, 0, 0);
  auto* heading = new QLabel(tr("Mix left over on the shelf"), tubs_side_);
  heading->setProperty("role", "heading");
  tubs->addWidget(heading);
  tubs_ = new TracedTable("leftover_tubs", heading->text(), 1, tubs_side_);
  connect(tubs_, &TracedTable::record_wanted, this, &BinsTab::trace_wanted);
  connect(tubs_, &QTableWidget::currentCellChanged, this, [this](int row) { tub_line_->set_holder(tub_at(row)); });
  constexpr int left_column = 3;
  tubs_->set_figures({left_column});
  tubs_->keep_to_rows(least_height_of_tubs);
  tubs->addWidget(tubs_);
  tub_line_ = new StockLine(book_, catalogue, QStringLiteral("tub"), tubs_side_);
  tubs->addWidget(tub_line_);
  auto* into_mix = bin_button(tubs_side_, "tub_mix", tr("Put this tub into the mix"));
  connect(into_mix, &QPushButton::clicked, this, [this] {
    if (const auto tub = tub_at(tubs_->currentRow())) emit mix_wanted(to_qt(tub->id));
  });
  tubs->addWidget(into_mix, 0, Qt::AlignLeft);
  layout->addWidget(tubs_side_);
  return side;
}

QString BinsTab::chosen_grain() const {
  const auto tub = tubs_->hasFocus() ? tub_at(tubs_->currentRow()) : std::nullopt;
  return tub ? to_qt(tub->id) : list_->current();
}

std::optional<RecordRef> BinsTab::tub_at(int row) const {
  const auto* cell = row < 0 ? nullptr : tubs_->item(row, 0);
  return cell == nullptr ? std::nullopt : std::optional(RecordRef{RecordKind::batch, cell->text().toStdString()});
}

/// Of what a repotting day left over; what is used up is told by the log.
void BinsTab::show_tubs() {
  const auto chosen = tub_at(tubs_->currentRow());
  RecordTable rows;
  rows.table.heading = {tr("no."), tr("mix"), tr("since"), tr("left")};
  for (const RecordLine& line : book_.workbook().list(RecordKind::batch)) {
    if (!line.stock || !(*line.stock > Mass{})) continue;
    const auto batch = book_.workbook().find(Id<Batch>{line.ref.id});
    const auto mix = batch && batch->record.mix ? book_.workbook().find(*batch->record.mix) : std::nullopt;
    rows.table.rows.push_back({to_qt(line.ref.id), to_qt(mix ? mix->record.mix.name : line.title), day_text(line.day), list_text(line)});
    rows.refs.push_back(line.ref);
  }
  tubs_side_->setVisible(!rows.refs.empty());
  tubs_->show_rows(rows);
  const auto at = std::ranges::find(rows.refs, chosen.value_or(RecordRef{}));
  if (!rows.refs.empty()) tubs_->setCurrentCell(at == rows.refs.end() ? 0 : static_cast<int>(at - rows.refs.begin()), 0);
  tub_line_->set_holder(tub_at(tubs_->currentRow()));
}

QString BinsTab::list_text(const RecordLine& bin) const {
  try {
    return short_stock_text(book_.workbook(), bin, units_);
  } catch (const WorkbookTrouble&) {
    return QStringLiteral("\u2013");  // the list tells of the trouble
  }
}

QWidget* BinsTab::bin_side(const Catalogue& catalogue) {
  auto* details = new QFrame(this);
  details_ = details;
  details->setObjectName(QStringLiteral("card"));
  auto* card = new QVBoxLayout(details);
  card->setContentsMargins(10, 8, 10, 8);
  card->setSpacing(8);
  title_ = new QLabel(details);
  title_->setObjectName(QStringLiteral("bin_title"));
  title_->setProperty("role", "heading");
  title_->setWordWrap(true);
  form_ = new RecordForm(details);
  add_rows(catalogue);
  connect(form_, &RecordForm::typing_ended, this, [this] { book_.end_typing(); });
  gone_ = new GoneNotice(book_, QStringLiteral("bin"), {form_}, {}, details);
  card->addWidget(title_);
  card->addWidget(gone_);
  card->addWidget(form_);
  for (const auto& [label, name] : {std::pair{&tested_, "bin_tested"}, {&may_contain_, "bin_may_contain"}}) {
    *label = new QLabel(details);
    (*label)->setObjectName(QLatin1String(name));
    (*label)->setWordWrap(true);
    card->addWidget(*label);
  }
  left_ = new FigurePanel(details);
  card->addWidget(left_);
  stock_line_ = new StockLine(book_, catalogue, QStringLiteral("bin"), details);
  card->addWidget(stock_line_);
  contents_ = new TracedTable("bin_contents", tr("What was tipped into it"), 1, details);
  constexpr int dry_column = 4;
  contents_->set_figures({dry_column});
  contents_->keep_to_rows(least_height_of_contents);
  connect(contents_, &TracedTable::record_wanted, this, &BinsTab::trace_wanted);
  card->addWidget(contents_);
  card->addWidget(tipping_lines(details));
  auto* grade = bin_button(details, "bin_grade", tr("G&rade this bin"));
  auto* mix = bin_button(details, "bin_mix", tr("&Put into the mix"));
  connect(grade, &QPushButton::clicked, this, [this] { emit grade_wanted(list_->current()); });
  connect(mix, &QPushButton::clicked, this, [this] { emit mix_wanted(list_->current()); });
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(grade);
  buttons->addWidget(mix);
  buttons->addStretch(1);
  card->addLayout(buttons);
  card->addStretch(1);
  return details;
}

void BinsTab::add_rows(const Catalogue& catalogue) {
  form_->add({QStringLiteral("bin_name"), tr("&Name"), Kind::words, tr("as it stands on the lid"), editor_.shown([](const Bin& b) { return to_qt(b.name); }),
              editor_.words(tr("name"), [](Bin& b, std::string text) { b.name = std::move(text); })});
  material_ = new QComboBox(form_);
  material_->setObjectName(QStringLiteral("bin_material"));
  material_->setAccessibleName(tr("Material of the bin"));
  material_->setMinimumHeight(26);
  material_->addItem(tr("of several materials"), QString());
  for (const Material& material : catalogue.materials()) material_->addItem(material_words(material.name), to_qt(material.name));
  connect(material_, &QComboBox::activated, this, [this](int index) {
    editor_.save(tr("material"), [&](Bin& b) { b.material = material_->itemData(index).toString().toStdString(); });
  });
  form_->add(tr("&Material"), material_);
  form_->add({QStringLiteral("bin_density"), tr("&Litre weight, dry"), Kind::density, tr("measured on what lies in it"),
              editor_.shown([](const Bin& b) { return b.bulk_density ? measured_text(in_g_l(*b.bulk_density)) : QString(); }),
              editor_.taken(tr("litre weight"), parse_density, [](Bin& b, std::optional<double> value) { b.bulk_density = value ? std::optional(bulk_g_l(*value)) : std::nullopt; })});
  form_->add({QStringLiteral("bin_note"), tr("Note"), Kind::words, tr("anything worth knowing next year"), editor_.shown([](const Bin& b) { return to_qt(b.note); }),
              editor_.words(tr("note"), [](Bin& b, std::string text) { b.note = std::move(text); })});
}

QWidget* BinsTab::tipping_lines(QWidget* parent) {
  auto* lines = new QWidget(parent);
  auto* grid = new QGridLayout(lines);
  grid->setContentsMargins(0, 0, 0, 0);
  const auto field = [&](int column, const char* object_name, const QString& label_text, const QString& hint) {
    auto* made = new QLineEdit(lines);
    made->setObjectName(QString::fromLatin1(object_name));
    QString name = label_text;
    made->setAccessibleName(name.remove(u'&'));
    made->setAccessibleDescription(hint);
    made->setPlaceholderText(hint);
    made->setMinimumHeight(28);
    auto* label = new QLabel(label_text, lines);
    label->setBuddy(made);
    grid->addWidget(label, 0, column);
    grid->addWidget(made, 1, column);
    connect(made, &QLineEdit::returnPressed, this, &BinsTab::tip_in);
    return made;
  };
  source_ = field(0, "bin_source", tr("Tip in"), tr("bag, lot, batch or bin"));
  amount_ = field(1, "bin_amount", tr("How much"), amount_hint(units_));
  day_ = field(2, "bin_day", tr("On"), tr("like %1").arg(example_day()));
  day_->setText(day_text(today()));
  grid->setColumnStretch(0, 3);
  grid->setColumnStretch(1, 2);
  grid->setColumnStretch(2, 1);
  auto* tip = bin_button(lines, "bin_tip_in", tr("Tip in"));
  auto* empty = bin_button(lines, "bin_empty_out", tr("It is empty"));
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(tip);
  buttons->addWidget(empty);
  buttons->addStretch(1);
  grid->addLayout(buttons, 2, 0, 1, 3);
  connect(tip, &QPushButton::clicked, this, &BinsTab::tip_in);
  connect(empty, &QPushButton::clicked, this, &BinsTab::empty_out);
  fault_ = new QLabel(lines);
  fault_->setObjectName(QStringLiteral("bin_fault"));
  fault_->setProperty("role", "fault");
  fault_->setWordWrap(true);
  fault_->hide();
  grid->addWidget(fault_, 3, 0, 1, 3);
  fit_day();
  return lines;
}

void BinsTab::fit_day() { day_->setMinimumWidth(day_->fontMetrics().horizontalAdvance(QStringLiteral("0000-00-00")) + 24); }

void BinsTab::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && day_ != nullptr) fit_day();
}

void BinsTab::show_fault(const QString& text) {
  fault_->setText(text);
  fault_->setVisible(!text.isEmpty());
}

void BinsTab::add_bin() {
  Bin fresh;
  fresh.name = tr("leftovers").toStdString();
  const QString id = to_qt(book_.workbook().suggest_id(RecordKind::bin));
  if (book_.add(fresh, tr("bin %1").arg(id), id, event_about({RecordKind::bin, id.toStdString()}, tr("Put up bin %1").arg(id), today())).isEmpty()) return;
  list_->show_record(id);
  auto* name = form_->findChild<QLineEdit*>(QStringLiteral("bin_name"));
  name->setFocus();
  name->selectAll();
}

void BinsTab::remove_bin() {
  const auto bin = editor_.record();
  if (!bin) return;
  if (book_.workbook().is_used(ref_to(bin->id))) {
    emit book_.told(tr("Bin %1 stays: tests, batches or the stock name it. Write down that it is empty instead.").arg(list_->current()));
    return;
  }
  form_->drop_typing();
  book_.remove(*bin, tr("bin %1 removed").arg(list_->current()));
}

Result<std::optional<Mass>> BinsTab::amount_of(const RecordRef& source) const {
  const std::string text = amount_->text().trimmed().toStdString();
  if (text.empty()) return std::optional<Mass>{};
  if (const auto mass = parse_mass(text, MassUnit::gram)) return std::optional(mass->mass);
  const auto litres = parse_volume(text, VolumeUnit::litre);
  if (!litres) return litres.problems();
  auto density = bulk_density_of(book_.workbook(), source);
  if (const auto bin = editor_.record(); !density && bin) density = bin->record.bulk_density;
  if (!density) return Problem{"stock.no-density-known", {}, {{"kind", std::string(kind_name(source.kind))}, {"id", source.id}}};
  return std::optional(LooseVolume(*litres) * *density);
}

void BinsTab::tip_in() {
  const auto bin = editor_.record();
  if (!bin) return;
  const auto [source, source_fault] = called(book_.workbook(), source_->text());
  if (!source) return show_fault(source_fault.isEmpty() ? tr("Type the number of what is tipped in.") : source_fault);
  const RecordRef self = ref_to(bin->id);
  if (*source == self) return show_fault(tr("A bin can't be tipped into itself: name another."));
  const auto amount = amount_of(*source);
  if (!amount) return show_fault(sentence_text(amount.problems().front(), units_));
  Bin now = bin->record;
  const std::string day = typed_day(day_->text());
  now.contents.push_back({*source, day.empty() ? std::nullopt : std::optional(day), {}, *amount});
  if (const Problems problems = check(now); !problems.empty()) return show_fault(sentence_text(problems.front(), units_));
  Change change;
  change.label = tr("%1 tipped into bin %2").arg(to_qt(source->id), to_qt(self.id)).toStdString();
  change.edits.push_back({self, bin->revision, Record(std::move(now))});
  change.log = event_about(self, tr("Tipped %1 into bin %2").arg(to_qt(source->id), to_qt(self.id)), day.empty() ? today() : day);
  change.log->about.push_back(*source);
  const auto booked = [&](const RecordRef& holder, StockReason reason, Mass mass, const RecordRef& other) {
    StockEntry entry;
    entry.holder = holder;
    entry.reason = reason;
    entry.change = mass;
    entry.other = other;
    entry.day = day.empty() ? today() : day;
    change.edits.push_back({RecordRef{RecordKind::stock_entry, {}}, 0, Record(std::move(entry))});
  };
  if (*amount) {
    // What was never taken into stock has nothing to be taken out of.
    if (book_.workbook().stock_of(*source)) booked(*source, StockReason::used, **amount * -1.0, self);
    booked(self, StockReason::returned, **amount, *source);
  }
  if (!book_.apply(std::move(change))) return;
  show_fault({});
  source_->clear();
  amount_->clear();
}

void BinsTab::empty_out() {
  const auto bin = editor_.record();
  if (!bin) return;
  const std::string day = day_->text().trimmed().isEmpty() ? today() : typed_day(day_->text());
  Bin now = bin->record;
  for (BinContent& content : now.contents) {
    if (!content.emptied) content.emptied = day;
  }
  if (now == bin->record) return show_fault(tr("Nothing is noted to lie in it now."));
  if (const Problems problems = check(now); !problems.empty()) return show_fault(sentence_text(problems.front(), units_));
  const RecordRef self = ref_to(bin->id);
  Change change;
  change.label = tr("bin %1 emptied").arg(to_qt(self.id)).toStdString();
  change.log = event_about(self, tr("Bin %1 is empty").arg(to_qt(self.id)), day);
  change.edits.push_back({self, bin->revision, Record(std::move(now))});
  if (const auto left = book_.workbook().stock_of(self); left && *left > Mass{}) {
    StockEntry rest;
    rest.holder = self;
    rest.reason = StockReason::thrown_out;
    rest.change = *left * -1.0;
    rest.day = day;
    change.edits.push_back({RecordRef{RecordKind::stock_entry, {}}, 0, Record(std::move(rest))});
  }
  if (book_.apply(std::move(change))) show_fault({});
}

void BinsTab::set_units(UnitSystem units) {
  units_ = units;
  amount_->setPlaceholderText(amount_hint(units));
  amount_->setAccessibleDescription(amount_->placeholderText());
  form_->set_units(units);
  stock_line_->set_units(units);
  tub_line_->set_units(units);
  refresh();
}

void BinsTab::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void BinsTab::chosen() {
  gone_->leave();
  book_.end_typing();
  form_->refresh(true);
  show_fault({});
  refresh();
}

void BinsTab::refresh() {
  if (!isVisible()) return;
  show_tubs();
  const RecordEditor<Bin>::ReadOnce once(editor_);
  const auto bin = editor_.record();
  details_->setVisible(bin || gone_->is_holding());
  if (!bin) return;
  gone_->is_back();
  stock_line_->set_holder(ref_to(bin->id));
  const RecordRef self = ref_to(bin->id);
  form_->refresh(false);
  title_->setText(comma_list({to_qt(self.id), to_qt(bin->record.name)}));
  material_->setCurrentIndex(std::max(0, material_->findData(to_qt(bin->record.material))));
  tested_->setText(tested_text(book_.workbook(), self));
  left_->show_group(stock_figures(book_.workbook(), self, units_));
  may_contain_->setText(may_contain_sentence(bin->record));
  const auto back = trace(book_.workbook(), self, TraceDirection::back);
  const auto title = [&](const RecordRef& ref) {
    const auto step = back ? std::ranges::find(back->steps, ref, &TraceStep::ref) : std::vector<TraceStep>::const_iterator();
    return back && step != back->steps.end() && !step->title.empty() ? title_words(ref.kind, step->title) : QStringLiteral("\u2013");
  };
  RecordTable rows;
  rows.table.heading = {tr("what"), tr("title"), tr("tipped in"), tr("until"), tr("dry")};
  for (const BinContent& content : bin->record.contents) {
    const auto day = [](const std::optional<std::string>& iso) { return iso ? day_text(*iso) : QStringLiteral("\u2013"); };
    rows.table.rows.push_back({QStringLiteral("%1 %2").arg(kind_text(content.source.kind), to_qt(content.source.id)), title(content.source), day(content.day),
                               content.emptied ? day(content.emptied) : tr("still in it"), to_local(mass_text(content.dry_mass, units_))});
    rows.refs.push_back(content.source);
  }
  contents_->show_rows(rows);
}

}  // namespace gritwright::desktop
