#include "trees_tab.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>
#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "gritwright/formats/number.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "gritwright/models/tree_due.hpp"
#include "models/grain_trace.hpp"
#include "models/material_words.hpp"
#include "text.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/flow_line.hpp"
#include "widgets/folding_sides.hpp"
#include "widgets/gone_notice.hpp"
#include "widgets/history_table.hpp"
#include "widgets/kept_line.hpp"
#include "widgets/list_fit.hpp"
#include "widgets/record_form.hpp"
#include "widgets/record_list_side.hpp"
#include "widgets/tree_air_note.hpp"

namespace gritwright::desktop {

namespace {

constexpr int looked_at = -1;  // beside the conditions
constexpr qsizetype bare_rooted_column = 6;
QString no_text() { return QStringLiteral("\u2013"); }

Result<double> tree_number(const std::string& text) { return parse_number(text, DecimalMark::point_or_comma); }
Result<Length> tree_length(const std::string& text) { return parse_length(text, LengthUnit::centimetre); }
QString cm_of(std::optional<Length> length) { return length ? number_text(in_cm(*length), 6) : QString(); }

QString face_text(const std::string& face) {
  static const std::pair<const char*, const char*> names[] = {{"top", QT_TRANSLATE_NOOP("gritwright::desktop::TreesTab", "top")},     {"bottom", QT_TRANSLATE_NOOP("gritwright::desktop::TreesTab", "bottom")},
                                                              {"left", QT_TRANSLATE_NOOP("gritwright::desktop::TreesTab", "left")},   {"right", QT_TRANSLATE_NOOP("gritwright::desktop::TreesTab", "right")},
                                                              {"front", QT_TRANSLATE_NOOP("gritwright::desktop::TreesTab", "front")}, {"back", QT_TRANSLATE_NOOP("gritwright::desktop::TreesTab", "back")}};
  for (const auto& [name, text] : names) {
    if (face == name) return TreesTab::tr(text);
  }
  if (constexpr std::string_view corners = " corners"; face.ends_with(corners)) return TreesTab::tr("%1 corners").arg(face_text(face.substr(0, face.size() - corners.size())));
  return to_qt(face);
}

HistoryTable* history_table(QWidget* parent, const char* object_name, const QString& name, const QStringList& headings, const QString& heading_of_words) {
  auto* table = new HistoryTable(headings, heading_of_words, parent);
  table->setObjectName(QString::fromLatin1(object_name));
  table->setAccessibleName(name);
  return table;
}

QStringList repotting_headings() {
  return {TreesTab::tr("day"),         TreesTab::tr("pot"),     TreesTab::tr("mix"),       TreesTab::tr("plan"), TreesTab::tr("cut"), TreesTab::tr("combed"),
          TreesTab::tr("bare-rooted"), TreesTab::tr("taken off"), TreesTab::tr("untouched"), TreesTab::tr("note")};
}

/// What a row says, in one: "pot POT-04; mix MX-02; bare-rooted; roots firm".
QString repotting_words(const QStringList& cells) {
  const QStringList headings = repotting_headings();
  QStringList words;
  for (qsizetype column = 1; column < cells.size(); ++column) {
    const QString& text = cells[column];
    if (text.isEmpty() || text == no_text()) continue;
    if (column == bare_rooted_column) words << (text == TreesTab::tr("yes") ? QStringList{headings[column]} : QStringList{});
    else words << (column + 1 == cells.size() ? text : QStringLiteral("%1\u00a0%2").arg(headings[column], text));
  }
  return words.join(QStringLiteral("; "));
}

QLineEdit* entry(QWidget* parent, const char* object_name, const QString& name, const QString& hint) {
  auto* field = new QLineEdit(parent);
  field->setObjectName(QString::fromLatin1(object_name));
  field->setAccessibleName(name);
  field->setPlaceholderText(hint);
  field->setMinimumHeight(28);
  return field;
}

QComboBox* choice(QWidget* parent, const char* object_name, const QString& name) {
  auto* box = new QComboBox(parent);
  box->setObjectName(QString::fromLatin1(object_name));
  box->setAccessibleName(name);
  box->setMinimumHeight(28);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(9);
  return box;
}

QLabel* entry_fault(QWidget* parent, const char* object_name) {
  auto* fault = new QLabel(parent);
  fault->setObjectName(QString::fromLatin1(object_name));
  fault->setProperty("role", "fault");
  fault->setWordWrap(true);
  fault->hide();
  return fault;
}

}  // namespace

QString group_text(SpeciesGroup group) {
  switch (group) {
    case SpeciesGroup::conifer: return TreesTab::tr("conifer");
    case SpeciesGroup::deciduous_conifer: return TreesTab::tr("deciduous conifer");
    case SpeciesGroup::deciduous_developing: return TreesTab::tr("deciduous, developing");
    case SpeciesGroup::deciduous_refined: return TreesTab::tr("deciduous, refined");
    case SpeciesGroup::broadleaf_evergreen: return TreesTab::tr("broadleaf evergreen");
    case SpeciesGroup::acid_lover: return TreesTab::tr("acid lover");
    case SpeciesGroup::tropical: return TreesTab::tr("tropical");
    case SpeciesGroup::sick: return TreesTab::tr("sick tree");
    case SpeciesGroup::collected: return TreesTab::tr("freshly collected");
    case SpeciesGroup::imported: return TreesTab::tr("imported");
  }
  return {};
}

TreesTab::TreesTab(RecordBook& book, const Catalogue& catalogue, QWidget* parent)
    : QWidget(parent),
      book_(book),
      catalogue_(catalogue),
      editor_(book, [this] { return list_ == nullptr ? QString() : list_->current(); }, [](const QString& what, const QString& id) { return tr("%1 of tree %2").arg(what, id); }) {
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 8, 0, 0);
  auto* sides = new FoldingSides(QStringLiteral("trees_splitter"), this);
  const RecordListSide::Names names{QStringLiteral("trees"), tr("Trees"), tr("tree by number, name or species"),
                                    tr("No trees yet. Add the first: its species and group, then what it was last repotted into."), tr("condition"),
                                    QStringLiteral("%1, %2").arg(condition_word(Condition::thriving), tr("due %1").arg(QStringLiteral("0000")).replace(u' ', QChar(QChar::Nbsp)))};
  list_ = new RecordListSide(book, RecordKind::tree, names, [this](const RecordLine& line) { return state_of(line.ref.id); }, sides);
  connect(list_->add_button(QStringLiteral("trees_add"), tr("Add a t&ree")), &QPushButton::clicked, this, &TreesTab::add_tree);
  sides->add(list_);
  sides->add(new ColumnScroll(form_side(), sides));
  history_ = history_side();
  sides->add(new ColumnScroll(history_, sides), 1);
  sides->set_sizes({390, 370, 500});
  layout->addWidget(sides);
  connect(list_, &RecordListSide::chosen, this, &TreesTab::chosen);
  list_->set_hold([this](const QString& id) { return gone_->hold({RecordKind::tree, id.toStdString()}); });
  connect(gone_, &GoneNotice::let_go, this, [this] {
    seen_note_->clear();
    repotted_note_->clear();
    list_->look_again();
  });
  connect(&book_, &RecordBook::undone, form_, &RecordForm::forget_typing);
  connect(&book_, &RecordBook::changed, this, &TreesTab::refresh);
  form_->refresh(true);
  refresh();
}

QString TreesTab::state_of(const std::string& id) const {
  const auto tree = book_.workbook().find(Id<Tree>{id});
  if (!tree) return {};
  QStringList words;
  if (const auto condition = condition_now(tree->record)) words << condition_word(*condition);
  if (const auto due = next_repotting(tree->record); due && condition_now(tree->record) != Condition::dead) words << tr("due %1").arg(to_qt(due->from.substr(0, 4)));
  return comma_list(words);
}

QWidget* TreesTab::form_side() {
  auto* details = new QFrame(this);
  details_ = details;
  details->setObjectName(QStringLiteral("card"));
  auto* card = new QVBoxLayout(details);
  card->setContentsMargins(10, 8, 10, 8);
  title_ = new QLabel(details);
  title_->setObjectName(QStringLiteral("tree_title"));
  title_->setProperty("role", "heading");
  title_->setWordWrap(true);
  form_ = new RecordForm(details);
  add_name_rows();
  add_trunk_rows();
  add_season_rows();
  connect(form_, &RecordForm::typing_ended, this, [this] { book_.end_typing(); });
  due_ = new QLabel(details);
  due_->setObjectName(QStringLiteral("tree_due_text"));
  due_->setWordWrap(true);
  air_ = new TreeAirNote(book_, catalogue_, details);
  auto* plan = new QPushButton(tr("Root-mass p&lan of this tree"), details);
  plan->setObjectName(QStringLiteral("tree_plan"));
  plan->setAccessibleName(tr("Root-mass plan of this tree"));
  plan->setMinimumHeight(28);
  connect(plan, &QPushButton::clicked, this, [this] { emit plan_wanted(list_->current()); });
  // A note on what was seen must not slip to the next tree.
  gone_ = new GoneNotice(book_, QStringLiteral("tree"), {form_}, [this] { return !seen_note_->text().isEmpty() || !repotted_note_->text().isEmpty(); }, details);
  card->addWidget(title_);
  card->addWidget(gone_);
  card->addWidget(form_);
  card->addWidget(due_);
  card->addWidget(air_);
  card->addWidget(plan, 0, Qt::AlignLeft);
  card->addStretch(1);
  return details;
}

void TreesTab::add_name_rows() {
  form_->add({QStringLiteral("tree_name"), tr("&Name"), Kind::words, tr("as you call it"), editor_.shown([](const Tree& t) { return to_qt(t.name); }),
              editor_.words(tr("name"), [](Tree& t, std::string text) { t.name = std::move(text); })});
  form_->add({QStringLiteral("tree_species"), tr("&Species"), Kind::words, tr("as far as you know it"), editor_.shown([](const Tree& t) { return to_qt(t.species); }),
              editor_.words(tr("species"), [](Tree& t, std::string text) { t.species = std::move(text); })});
  groups_ = choice(form_, "tree_group", tr("Species group"));
  groups_->setMinimumContentsLength(14);
  groups_->setToolTip(tr("What its roots bear when it is repotted goes by this group. What its mix should be like is chosen for a mix, under Groups of trees."));
  groups_->addItem(tr("not chosen yet"), -1);
  for (const SpeciesGroup group : species_groups) groups_->addItem(group_text(group), static_cast<int>(group));
  connect(groups_, &QComboBox::activated, this, [this](int index) {
    const int chosen = groups_->itemData(index).toInt();
    editor_.save(tr("group"), [&](Tree& t) { t.group = chosen < 0 ? std::nullopt : std::optional(static_cast<SpeciesGroup>(chosen)); });
  });
  form_->add(tr("Species gro&up"), groups_);
  form_->add({QStringLiteral("tree_since"), tr("Since the year"), Kind::number, tr("sown, struck or collected"),
              editor_.shown([](const Tree& t) { return t.since_year ? QString::number(*t.since_year) : QString(); }),
              editor_.taken(tr("year"), tree_number, [](Tree& t, std::optional<double> value) {
                t.since_year = value ? std::optional(static_cast<int>(std::clamp(*value, 0.0, 9999.0))) : std::nullopt;
              })});
}

void TreesTab::add_trunk_rows() {
  form_->add({QStringLiteral("tree_trunk_width"), tr("Trunk &width"), Kind::length, tr("at the base, over the roots"), editor_.shown([](const Tree& t) { return cm_of(t.trunk_width); }),
              editor_.taken(tr("trunk width"), tree_length, [](Tree& t, std::optional<Length> value) { t.trunk_width = value; })});
  const auto base_row = [this](const char* name, const QString& label, const QString& hint, Length TrunkBase::*member) {
    form_->add({QString::fromLatin1(name), label, Kind::length, hint, editor_.shown([member](const Tree& t) { return t.trunk_base ? cm_of((*t.trunk_base).*member) : QString(); }),
                editor_.taken(tr("trunk base"), tree_length, [member](Tree& t, std::optional<Length> value) {
                  if (!value && !t.trunk_base) return;
                  if (!t.trunk_base) t.trunk_base.emplace();
                  (*t.trunk_base).*member = value.value_or(Length{});
                  if (t.trunk_base == TrunkBase{}) t.trunk_base.reset();
                })});
  };
  base_row("tree_base_right", tr("Trunk base, right"), tr("of the root mass's middle"), &TrunkBase::right);
  base_row("tree_base_back", tr("Trunk base, back"), tr("behind its middle"), &TrunkBase::back);
  base_row("tree_base_up", tr("Trunk base, up"), tr("over the root mass's underside"), &TrunkBase::up);
  form_->add({QStringLiteral("tree_mass"), tr("&Mass"), Kind::mass, tr("without soil and pot; for lifting"),
              editor_.shown([](const Tree& t) { return t.mass ? number_text(in_g(*t.mass), 6) : QString(); }),
              editor_.taken(tr("mass"), [](const std::string& text) { return parse_mass(text, MassUnit::gram); },
                            [](Tree& t, std::optional<WrittenMass> value) { t.mass = value ? std::optional(value->mass) : std::nullopt; })});
}

void TreesTab::add_season_rows() {
  form_->add({QStringLiteral("tree_ready"), tr("Ready when"), Kind::words, tr("as buds swell"), editor_.shown([](const Tree& t) { return to_qt(t.window.ready_when); }),
              editor_.words(tr("window"), [](Tree& t, std::string text) { t.window.ready_when = std::move(text); })});
  const auto day_row = [this](const char* name, const QString& label, const QString& hint, auto place, auto read) {
    form_->add({QString::fromLatin1(name), label, Kind::words, hint, editor_.shown([place](const Tree& t) { return day_text(place(t).value_or("")); }),
                editor_.words(label, [place, read](Tree& t, const std::string& text) { place(t) = text.empty() ? std::nullopt : std::optional(read(to_qt(text))); })});
  };
  day_row("tree_opens", tr("Window opens"), tr("month and day, like 03-01"), [](auto& t) -> auto& { return t.window.opens; }, typed_month_day);
  day_row("tree_closes", tr("Window closes"), tr("month and day, like 04-20"), [](auto& t) -> auto& { return t.window.closes; }, typed_month_day);
  day_row("tree_due", tr("Next repotting"), tr("a day like %1; by interval if empty").arg(example_day()), [](auto& t) -> auto& { return t.due; }, typed_day);
  form_->add({QStringLiteral("tree_photos"), tr("Photos"), Kind::words, tr("files by reference, apart by ;"), editor_.shown([](const Tree& t) {
                QStringList files;
                for (const std::string& file : t.photos) files << to_qt(file);
                return files.join(QStringLiteral("; "));
              }),
              editor_.words(tr("photos"), [](Tree& t, const std::string& text) {
                t.photos.clear();
                for (const QString& file : to_qt(text).split(u';', Qt::SkipEmptyParts)) t.photos.push_back(file.trimmed().toStdString());
              })});
  auto* photo = new QPushButton(tr("Add a photo..."), form_);
  photo->setObjectName(QStringLiteral("tree_add_photo"));
  photo->setAccessibleName(tr("Add a photo by its file"));
  connect(photo, &QPushButton::clicked, this, &TreesTab::add_photo);
  form_->add(QString(), photo);
  form_->add({QStringLiteral("tree_note"), tr("No&te"), Kind::words, tr("anything worth knowing"), editor_.shown([](const Tree& t) { return to_qt(t.note); }),
              editor_.words(tr("note"), [](Tree& t, std::string text) { t.note = std::move(text); })});
}

QWidget* TreesTab::history_side() {
  auto* side = new QSplitter(Qt::Vertical, this);
  side->setObjectName(QStringLiteral("trees_history_splitter"));
  side->setChildrenCollapsible(false);
  side->setHandleWidth(8);
  side->addWidget(seen_box(side));
  side->addWidget(repotting_box(side));
  return side;
}

QWidget* TreesTab::seen_box(QWidget* parent) {
  auto* box = new QFrame(parent);
  box->setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(box);
  layout->setContentsMargins(6, 8, 6, 8);
  auto* heading = new QLabel(tr("Condition"), box);
  heading->setProperty("role", "heading");
  layout->addWidget(heading);
  seen_ = history_table(box, "tree_seen_table", tr("The tree's condition, newest first"), {tr("day"), tr("condition"), tr("note")}, tr("condition"));
  layout->addWidget(seen_, 1);
  seen_day_ = entry(box, "tree_seen_day", tr("Day it was seen"), tr("like %1").arg(example_day()));
  seen_day_->setText(day_text(today()));
  seen_as_ = choice(box, "tree_seen_as", tr("Condition"));
  for (const Condition condition : {Condition::thriving, Condition::watch, Condition::sick, Condition::dead}) seen_as_->addItem(condition_word(condition), static_cast<int>(condition));
  seen_as_->addItem(tr("looked at for repotting"), looked_at);
  seen_note_ = entry(box, "tree_seen_note", tr("What was seen"), tr("colour, buds, water that stands, roots at the hole"));
  auto* button = new QPushButton(tr("Write down"), box);
  button->setObjectName(QStringLiteral("tree_seen_keep"));
  button->setAccessibleName(tr("Write down what was seen"));
  button->setMinimumHeight(28);
  auto* lines = new FlowLine(box);
  lines->add(tr("Da&y"), seen_day_, 0, widest_day());
  lines->add(tr("condition"), seen_as_, 1, QString(18, u'n'));
  lines->begin_line();
  lines->add(tr("note"), seen_note_, 1, QString(12, u'n'));
  lines->add({}, button);
  layout->addWidget(lines);
  seen_fault_ = entry_fault(box, "tree_seen_fault");
  layout->addWidget(seen_fault_);
  connect(button, &QPushButton::clicked, this, &TreesTab::write_seen);
  connect(seen_note_, &QLineEdit::returnPressed, this, &TreesTab::write_seen);
  seen_kept_ = new KeptLine(*seen_note_);
  seen_as_kept_ = new KeptChoice(*seen_as_);
  return box;
}

QWidget* TreesTab::repotting_box(QWidget* parent) {
  auto* box = new QFrame(parent);
  box->setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(box);
  layout->setContentsMargins(6, 8, 6, 8);
  auto* heading = new QLabel(tr("Repottings"), box);
  heading->setProperty("role", "heading");
  layout->addWidget(heading);
  repottings_ = history_table(box, "tree_repotting_table", tr("Repottings, newest first"), repotting_headings(), tr("what was done"));
  layout->addWidget(repottings_, 1);
  repotted_day_ = entry(box, "tree_repotted_day", tr("Day of the repotting"), tr("like %1").arg(day_text("2024-03-14")));
  repotted_pot_ = choice(box, "tree_repotted_pot", tr("Pot it went into"));
  repotted_mix_ = choice(box, "tree_repotted_mix", tr("Mix it stands in"));
  bare_rooted_ = new QCheckBox(tr("bare-rooted"), box);
  bare_rooted_->setObjectName(QStringLiteral("tree_bare_rooted"));
  bare_rooted_->setAccessibleName(bare_rooted_->text());
  bare_rooted_->setMinimumHeight(26);
  repotted_note_ = entry(box, "tree_repotted_note", tr("Note on the repotting"), tr("what was cut, what was found"));
  auto* button = new QPushButton(tr("Write down"), box);
  button->setObjectName(QStringLiteral("tree_repotted_keep"));
  button->setAccessibleName(tr("Write down a repotting"));
  button->setMinimumHeight(28);
  auto* lines = new FlowLine(box);
  lines->add(tr("Day"), repotted_day_, 0, widest_day());
  lines->add(tr("pot"), repotted_pot_, 1, QString(12, u'n'));
  lines->begin_line();
  lines->add(tr("mix"), repotted_mix_, 1, QString(12, u'n'));
  lines->add({}, bare_rooted_);
  lines->begin_line();
  lines->add(tr("note"), repotted_note_, 1, QString(12, u'n'));
  lines->add({}, button);
  layout->addWidget(lines);
  history_fault_ = entry_fault(box, "tree_history_fault");
  layout->addWidget(history_fault_);
  connect(button, &QPushButton::clicked, this, &TreesTab::write_repotting);
  for (const QLineEdit* field : {repotted_day_, repotted_note_}) connect(field, &QLineEdit::returnPressed, this, &TreesTab::write_repotting);
  repotted_kept_ = new KeptLine(*repotted_note_);
  repotted_day_kept_ = new KeptLine(*repotted_day_);
  repotted_pot_kept_ = new KeptChoice(*repotted_pot_);
  repotted_mix_kept_ = new KeptChoice(*repotted_mix_);
  connect(bare_rooted_, &QCheckBox::clicked, this, [this](bool on) {
    if (!entries_of_.isEmpty()) QSettings().setValue(kept_under("tree_bare_rooted"), on);
  });
  return box;
}

QString TreesTab::kept_under(const char* field) const {
  return entries_of_.isEmpty() ? QString() : QStringLiteral("typed/%1/%2/%3").arg(book_.settings_key(), entries_of_, QLatin1String(field));
}

/// What was typed for the tree before was meant for that one alone, and waits for it.
void TreesTab::begin_entries() {
  QStringList typed;
  for (const QLineEdit* note : {seen_note_, repotted_note_}) {
    if (!note->text().trimmed().isEmpty()) typed << note->text();
  }
  if (!typed.isEmpty() && !entries_of_.isEmpty()) emit book_.told(tr("Begun for tree %1, and waits there: %2").arg(entries_of_, semicolon_list(typed)));
  entries_of_ = list_->current();
  seen_day_->setText(day_text(today()));
  for (const auto& [line, field] : {std::pair{seen_kept_, "tree_seen_note"}, std::pair{repotted_kept_, "tree_repotted_note"}, std::pair{repotted_day_kept_, "tree_repotted_day"}})
    line->hold_under(kept_under(field));
  for (const auto& [choice, field] : {std::pair{seen_as_kept_, "tree_seen_as"}, std::pair{repotted_pot_kept_, "tree_repotted_pot"}, std::pair{repotted_mix_kept_, "tree_repotted_mix"}})
    choice->hold_under(kept_under(field));
  bare_rooted_->setChecked(!entries_of_.isEmpty() && QSettings().value(kept_under("tree_bare_rooted")).toBool());
  for (QLabel* fault : {seen_fault_, history_fault_}) fault->hide();
}

/// "TR-03 Crab apple: sick, needles yellow".
LogEntry TreesTab::event_of_tree(const QStringList& parts, const std::string& day) const {
  const auto stored = editor_.record();
  QStringList told = parts;
  told.removeAll(QString());
  const QString tree = stored ? QStringLiteral("%1 %2").arg(list_->current(), to_qt(stored->record.name)).trimmed() : list_->current();
  return event_about({RecordKind::tree, list_->current().toStdString()}, with_label(tree, comma_list(told)), day);
}

void TreesTab::write_seen() {
  const std::string day = typed_day(seen_day_->text());
  const std::string note = seen_note_->text().trimmed().toStdString();
  const int as = seen_as_->currentData().toInt();
  LogEntry told = event_of_tree({seen_as_->currentText(), to_qt(note)}, day);
  told.sort = LogSort::observation;
  const Problems problems = editor_.save_telling(as == looked_at ? tr("inspection") : tr("condition"), [&](Tree& tree) {
    if (as == looked_at) tree.inspections.push_back({day, note});
    else tree.conditions.push_back({day, static_cast<Condition>(as), note});
    std::ranges::stable_sort(tree.inspections, {}, &Inspection::day);
    std::ranges::stable_sort(tree.conditions, {}, &ConditionEntry::day);
  }, std::move(told));
  book_.end_typing();
  seen_fault_->setText(problems.empty() ? QString() : sentence_text(problems.front(), units_));
  seen_fault_->setVisible(!problems.empty());
  if (!problems.empty()) return seen_day_->setFocus();
  seen_note_->setText(QString());  // not to be undone as typing: undo takes the entry back
  seen_as_kept_->forget();
}

void TreesTab::write_repotting() {
  Repotting done;
  done.day = typed_day(repotted_day_->text());
  if (const QString pot = repotted_pot_->currentData().toString(); !pot.isEmpty()) done.container = Id<RecordedContainer>{pot.toStdString()};
  if (const QString mix = repotted_mix_->currentData().toString(); !mix.isEmpty()) done.mix = Id<MixVersion>{mix.toStdString()};
  done.bare_rooted = bare_rooted_->isChecked();
  done.note = repotted_note_->text().trimmed().toStdString();
  const auto chosen_in = [](const QComboBox& box) { return box.currentData().toString(); };
  const Problems problems = editor_.save_telling(tr("repotting"), [&](Tree& tree) {
    tree.repottings.push_back(done);
    std::ranges::stable_sort(tree.repottings, {}, &Repotting::day);
  }, event_of_tree({tr("repotting"), chosen_in(*repotted_pot_), chosen_in(*repotted_mix_), to_qt(done.note)}, done.day));
  book_.end_typing();
  history_fault_->setText(problems.empty() ? QString() : sentence_text(problems.front(), units_));
  history_fault_->setVisible(!problems.empty());
  if (!problems.empty()) return repotted_day_->setFocus();
  // All of it: a second Enter would write the same once more.
  for (QLineEdit* line : {repotted_day_, repotted_note_}) line->setText(QString());
  for (KeptChoice* choice : {repotted_pot_kept_, repotted_mix_kept_}) choice->forget();
  for (QComboBox* box : {repotted_pot_, repotted_mix_}) box->setCurrentIndex(0);
  if (!entries_of_.isEmpty()) QSettings().remove(kept_under("tree_bare_rooted"));
  bare_rooted_->setChecked(false);
}

void TreesTab::add_photo() {
  const QStringList files = QFileDialog::getOpenFileNames(this, tr("Add photos"), {}, tr("Pictures (*.jpg *.jpeg *.png *.webp *.heic);;All files (*)"));
  if (files.isEmpty()) return;
  editor_.save(tr("photos"), [&](Tree& tree) {
    for (const QString& file : files) tree.photos.push_back(file.toStdString());
  });
}

void TreesTab::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void TreesTab::set_units(UnitSystem units) {
  units_ = units;
  form_->set_units(units);
  refresh();
}

void TreesTab::add_tree() {
  Tree fresh;
  fresh.name = tr("new tree").toStdString();
  const QString id = to_qt(book_.workbook().suggest_id(RecordKind::tree));
  if (book_.add(fresh, tr("tree added"), id, event_about({RecordKind::tree, id.toStdString()}, QStringLiteral("%1: %2").arg(id, tr("tree added")), today())).isEmpty()) return;
  list_->show_record(id);
  auto* name = form_->findChild<QLineEdit*>(QStringLiteral("tree_name"));
  name->setFocus();
  name->selectAll();
}

void TreesTab::remove_tree() {
  const auto stored = editor_.record();
  if (!stored) return;
  if (book_.workbook().is_used(ref_to(stored->id))) {
    emit book_.told(tr("Tree %1 stays: plans, days or the log name it. Write down that it is dead instead.").arg(list_->current()));
    return;
  }
  form_->drop_typing();
  book_.remove(*stored, tr("tree %1 removed").arg(list_->current()));
}

void TreesTab::chosen() {
  gone_->leave();
  book_.end_typing();
  begin_entries();
  form_->refresh(true);
  refresh();
}

void TreesTab::refresh_choices() {
  const auto fill = [this](QComboBox& box, RecordKind kind, const QString& none) {
    const QVariant was = box.currentData();
    box.clear();
    box.addItem(none, QString());
    for (const RecordLine& line : book_.workbook().list(kind)) box.addItem(choice_words(line), to_qt(line.ref.id));
    box.setCurrentIndex(std::max(0, box.findData(was)));
  };
  fill(*repotted_pot_, RecordKind::container, tr("not known"));
  fill(*repotted_mix_, RecordKind::mix, tr("not known"));
}

void TreesTab::refresh() {
  if (!isVisible()) return;
  const RecordEditor<Tree>::ReadOnce once(editor_);
  const auto stored = editor_.record();
  details_->setVisible(stored || gone_->is_holding());
  history_->setEnabled(stored || gone_->is_holding());
  refresh_choices();
  if (!stored) {
    seen_->setRowCount(0);
    repottings_->setRowCount(0);
    return;
  }
  const Tree& tree = stored->record;
  gone_->is_back();
  form_->refresh(false);
  groups_->setCurrentIndex(tree.group ? groups_->findData(static_cast<int>(*tree.group)) : 0);
  const int age = tree.since_year ? QDate::currentDate().year() - *tree.since_year : -1;
  title_->setText(age >= 0 ? tr("Tree %1, %2 years").arg(list_->current()).arg(age) : tr("Tree %1").arg(list_->current()));
  const auto due = next_repotting(tree);
  if (due && tree.due) due_->setText(tr("Next repotting: %1, as you set it.").arg(day_text(due->to)));
  else if (due) due_->setText(tr("Next repotting by the group's interval: from %1, by %2 at the latest (common practice; look at it first).").arg(day_text(due->from), day_text(due->to)));
  else due_->setText(tree.group ? tr("Next repotting: \u2013 (it has no last repotting, or its group has no interval)") : tr("Next repotting: \u2013 (choose its group and write down the last repotting)"));
  air_->show_tree(tree);
  refresh_seen(tree);
  refresh_repottings(tree);
}

void TreesTab::refresh_seen(const Tree& tree) {
  std::vector<std::pair<std::string, HistoryTable::Row>> by_day;
  const auto add = [&](const std::string& day, const QString& seen, const QString& note) {
    by_day.push_back({day, {{day_text(day), seen, note}, note.isEmpty() ? seen : with_label(seen, note)}});
  };
  for (const ConditionEntry& one : tree.conditions) add(one.day, condition_word(one.condition), to_qt(one.note));
  for (const Inspection& one : tree.inspections) add(one.day, tr("looked at"), to_qt(one.note));
  std::ranges::stable_sort(by_day, std::greater<>(), &std::pair<std::string, HistoryTable::Row>::first);
  std::vector<HistoryTable::Row> rows;
  for (auto& [day, row] : by_day) rows.push_back(std::move(row));
  seen_->show_rows(rows);
}

void TreesTab::refresh_repottings(const Tree& tree) {
  const auto work_text = [this](const std::vector<FaceWork>& works) {
    QStringList texts;
    for (const FaceWork& work : works) texts << tr("%1 %2").arg(face_text(work.face), to_local(depth_text(Depth(work.depth), units_)));
    return comma_list(texts);
  };
  const auto share_text = [](const auto& share) { return share ? to_local(percent_text(share->value(), 0)) : no_text(); };
  const auto id_text = [](const auto& id) { return id ? to_qt(id->text) : no_text(); };
  const bool any_bare_rooted = std::ranges::any_of(tree.repottings, &Repotting::bare_rooted);
  std::vector<HistoryTable::Row> rows;
  for (auto one = tree.repottings.rbegin(); one != tree.repottings.rend(); ++one) {
    const QString bare_rooted = one->bare_rooted ? tr("yes") : any_bare_rooted ? tr("no") : QString();
    QStringList cells{day_text(one->day), id_text(one->container), id_text(one->mix), to_qt(one->plan_name), work_text(one->cut), work_text(one->combed), bare_rooted,
                      share_text(one->removed_share), share_text(one->untouched_share), to_qt(one->note)};
    QString words = repotting_words(cells);
    rows.push_back({std::move(cells), std::move(words)});
  }
  repottings_->show_rows(rows);
}

}  // namespace gritwright::desktop
