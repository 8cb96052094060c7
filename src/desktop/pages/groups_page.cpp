#include "groups_page.hpp"

#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "gritwright/formats/typed_quantity.hpp"
#include "text.hpp"
#include "theme.hpp"
#include "trees_tab.hpp"
#include "widgets/column_fit.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/folding_sides.hpp"
#include "widgets/gone_notice.hpp"
#include "widgets/record_form.hpp"
#include "widgets/record_table.hpp"
#include "widgets/wish_table.hpp"

namespace gritwright::desktop {

namespace {

enum GroupColumn { group_name_column, group_state_column, group_columns };

QString aperture_words(Aperture size) { return number_text(in_mm(size), 6); }

QLabel* wrapped_label(const QString& text, const char* role, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setProperty("role", role);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  return label;
}

}  // namespace

GroupsPage::GroupsPage(RecordBook& book, const Catalogue& catalogue, QWidget* parent) : QWidget(parent), book_(book), catalogue_(catalogue) {
  setObjectName(QStringLiteral("groups_page"));
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(8, 8, 8, 8);
  auto* sides = new FoldingSides(QStringLiteral("groups_splitter"), this);
  sides->add(list_side());
  sides->add(new ColumnScroll(form_side(), sides), 1);
  sides->set_sizes({420, 700});
  layout->addWidget(sides);
  connect(&book_, &RecordBook::undone, form_, &RecordForm::forget_typing);
  connect(&book_, &RecordBook::changed, this, &GroupsPage::refresh);
}

QPushButton* GroupsPage::button(const char* object_name, const QString& text, const QString& is) {
  auto* made = new QPushButton(text, this);
  made->setObjectName(QLatin1String(object_name));
  made->setAccessibleName(is);
  made->setToolTip(is);
  made->setMinimumHeight(28);
  return made;
}

QWidget* GroupsPage::list_side() {
  auto* card = new QFrame(this);
  card->setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(card);
  layout->setContentsMargins(10, 8, 10, 8);
  layout->setSpacing(6);
  layout->addWidget(wrapped_label(tr("Groups of trees"), "heading", card));
  layout->addWidget(wrapped_label(tr("What a mix for these trees should be like, and so what a search for parts starts with. What a tree's roots bear goes by the group on its own page. It is common practice, never the only way: your climate, your water and your hands know better."), "muted", card));
  list_ = new QTableWidget(card);
  list_->setObjectName(QStringLiteral("groups_table"));
  list_->setAccessibleName(tr("Groups of trees"));
  list_->setColumnCount(group_columns);
  list_->setHorizontalHeaderLabels({tr("group"), tr("whose")});
  list_->setSelectionBehavior(QAbstractItemView::SelectRows);
  list_->setSelectionMode(QAbstractItemView::SingleSelection);
  list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  list_->setTabKeyNavigation(false);
  list_->setAlternatingRowColors(true);
  list_->verticalHeader()->hide();
  list_->horizontalHeader()->setHighlightSections(false);
  list_->installEventFilter(this);
  columns_ = new ColumnFit(*list_, {group_name_column, group_state_column}, group_name_column);
  connect(list_, &QTableWidget::itemSelectionChanged, this, &GroupsPage::choose_row);
  layout->addWidget(list_, 1);
  auto* buttons = new QGridLayout;
  QPushButton* add = button("groups_add", tr("&New, like this one"), tr("Add a group of your own that starts with the wishes of the chosen one"));
  remove_ = button("groups_remove", tr("&Leave out"), tr("Do not offer this group any more; a group of your own goes"));
  restore_ = button("groups_restore", tr("Re&store"), tr("Back to common practice, or offered again"));
  find_ = button("groups_find", tr("Find &parts for it"), tr("Find parts for this group"));
  buttons->addWidget(add, 0, 0);
  buttons->addWidget(remove_, 0, 1);
  buttons->addWidget(restore_, 1, 0);
  buttons->addWidget(find_, 1, 1);
  layout->addLayout(buttons);
  connect(add, &QPushButton::clicked, this, &GroupsPage::add_group);
  connect(remove_, &QPushButton::clicked, this, &GroupsPage::remove_group);
  connect(restore_, &QPushButton::clicked, this, &GroupsPage::restore_group);
  connect(find_, &QPushButton::clicked, this, [this] { emit find_wanted(QString::fromStdString(current_)); });
  return card;
}

QWidget* GroupsPage::form_side() {
  auto* card = new QFrame(this);
  card->setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(card);
  layout->setContentsMargins(10, 8, 10, 8);
  layout->setSpacing(6);
  title_ = wrapped_label({}, "heading", card);
  title_->setObjectName(QStringLiteral("groups_title"));
  layout->addWidget(title_);
  form_ = new RecordForm(card);
  gone_ = new GoneNotice(book_, QStringLiteral("group"), {form_}, {}, card);
  connect(gone_, &GoneNotice::let_go, this, &GroupsPage::refresh);
  layout->addWidget(gone_);
  add_rows();
  layout->addWidget(form_);
  wishes_ = new WishTable("group_wishes_table", tr("Wishes of this group"), card);
  layout->addWidget(wishes_);
  fault_ = wrapped_label({}, "fault", card);
  fault_->setObjectName(QStringLiteral("group_wish_faults"));
  layout->addWidget(fault_);
  layout->addStretch(1);
  connect(wishes_, &WishTable::wish_typed, this, &GroupsPage::take_wish);
  connect(form_, &RecordForm::typing_ended, this, [this] { book_.end_typing(); });
  return card;
}

void GroupsPage::add_rows() {
  const auto shown = [this](const std::function<QString(const SpeciesProfile&)>& text) {
    return [this, text] {
      const TreeGroup* group = chosen();
      return group != nullptr ? text(group->profile) : QString();
    };
  };
  const auto words = [this](const QString& what, std::string SpeciesProfile::*member) {
    return [this, what, member](const QString& text) {
      return save(what, [&](SpeciesProfile& profile) -> Problems {
        profile.*member = text.trimmed().toStdString();
        return {};
      });
    };
  };
  const auto taken_size = [this](const QString& what, const std::function<void(SpeciesProfile&, Aperture)>& set) {
    return [this, what, set](const QString& text) -> Problems {
      const auto aperture = parse_aperture(text.trimmed().toStdString());
      if (!aperture) return aperture.problems();
      return save(what, [&](SpeciesProfile& profile) -> Problems {
        set(profile, *aperture);
        return {};
      });
    };
  };
  const auto band_side = [shown](Aperture Band::*side) {
    return shown([side](const SpeciesProfile& profile) {
      const auto band = sheet_of(profile).band;
      return band ? aperture_words((*band).*side) : QString();
    });
  };
  form_->add({QStringLiteral("groups_name"), tr("Na&me"), Kind::words, tr("as you call these trees"), shown([](const SpeciesProfile& profile) { return to_qt(profile.name); }),
              words(tr("name"), &SpeciesProfile::name), [this] {
                const TreeGroup* group = chosen();
                return group != nullptr && !group->is_common;
              }});
  kinds_ = new QComboBox(form_);
  kinds_->setObjectName(QStringLiteral("groups_kind"));
  kinds_->setAccessibleName(tr("Trees it is for"));
  kinds_->addItem(tr("any"), -1);
  for (const SpeciesGroup group : species_groups) kinds_->addItem(group_text(group), static_cast<int>(group));
  form_->add(tr("Trees it is for"), kinds_);
  connect(kinds_, &QComboBox::activated, this, [this](int index) {
    const int kind = kinds_->itemData(index).toInt();
    (void)save(tr("trees it is for"), [&](SpeciesProfile& profile) -> Problems {
      profile.group = kind < 0 ? std::nullopt : std::optional(static_cast<SpeciesGroup>(kind));
      return {};
    });
  });
  form_->add({QStringLiteral("groups_band_from"), tr("Wanted grain from"), Kind::aperture, tr("the finest grain that is wanted"), band_side(&Band::from),
              taken_size(tr("wanted grain"), [](SpeciesProfile& profile, Aperture from) { change_band(profile, from, {}); })});
  form_->add({QStringLiteral("groups_band_to"), tr("Wanted grain to"), Kind::aperture, tr("the coarsest grain that is wanted"), band_side(&Band::to),
              taken_size(tr("wanted grain"), [](SpeciesProfile& profile, Aperture to) { change_band(profile, {}, to); })});
  form_->add({QStringLiteral("groups_dust"), tr("Dust is finer than"), Kind::aperture, tr("what clogs a pot of these trees"),
              shown([](const SpeciesProfile& profile) { return sheet_of(profile).dust_size; }), taken_size(tr("size of dust"), change_dust_size)});
  form_->add({QStringLiteral("groups_parts"), tr("Mi&x to start from"), Kind::words, tr("parts and names: 5 akadama : 3 pumice"),
              shown([](const SpeciesProfile& profile) { return starting_parts_text(profile.starting_parts); }), [this](const QString& text) -> Problems {
                return save(tr("mix to start from"), [&](SpeciesProfile& profile) -> Problems {
                  auto parts = starting_parts_of(text, catalogue_, profile.starting_parts);
                  if (!parts) return parts.problems();
                  profile.starting_parts = std::move(parts).value();
                  return {};
                });
              }});
  form_->add({QStringLiteral("groups_note"), tr("Note"), Kind::words, tr("what else you go by"), shown([](const SpeciesProfile& profile) { return to_qt(profile.note); }),
              words(tr("note"), &SpeciesProfile::note)});
}

const TreeGroup* GroupsPage::chosen() const {
  const auto found = std::ranges::find_if(groups_, [this](const TreeGroup& group) { return group.profile.name == current_; });
  return found != groups_.end() ? &*found : nullptr;
}

Problems GroupsPage::save(const QString& what, const std::function<Problems(SpeciesProfile&)>& change) {
  const TreeGroup* const group = chosen();
  if (group == nullptr) return stored_ ? Problems{not_there(ref_to(*stored_))} : Problems{};
  SpeciesProfile now = group->profile;
  if (Problems problems = change(now); !problems.empty()) return problems;
  if (Problems problems = check(now); !problems.empty()) return problems;
  const bool taken = now.name != current_ && std::ranges::any_of(groups_, [&](const TreeGroup& other) { return other.profile.name == now.name; });
  if (taken) return Problems{Problem{"profile.name-taken", {}, {{"name", now.name}}}};
  if (now == group->profile) return {};
  const std::optional<Stored<SpeciesProfile>> was = group->stored;
  const QString label = tr("%1 of the group %2").arg(what, group_name(group->profile));
  const std::string before = std::exchange(current_, now.name);
  const bool saved = was ? book_.replace(*was, std::move(now), label, QStringLiteral("groups/%1/%2").arg(to_qt(was->id.text), what)) : !book_.add(std::move(now), label).isEmpty();
  if (!saved) current_ = before;
  return {};
}

void GroupsPage::take_wish(WishRow row, const WishText& typed) {
  const Problems problems = save(tr("wishes"), [&](SpeciesProfile& profile) { return change_wish(profile, row, typed); });
  book_.end_typing();
  if (problems.empty()) unread_.erase(row);
  else unread_[row] = {typed, problems};
  // The table is still telling of the change that led here.
  QMetaObject::invokeMethod(this, &GroupsPage::refresh_wishes, Qt::QueuedConnection);
}

void GroupsPage::add_group() {
  const TreeGroup* const like = chosen();
  SpeciesProfile fresh = like != nullptr ? like->profile : common_profiles().front();
  fresh.left_out = false;
  const QString name = tr("my %1").arg(group_name(fresh));
  const auto is_taken = [this](const QString& text) { return std::ranges::any_of(groups_, [&](const TreeGroup& group) { return to_qt(group.profile.name) == text; }); };
  QString free_name = name;
  for (int number = 2; is_taken(free_name); ++number) free_name = tr("%1 %2", "name of a group, number").arg(name).arg(number);
  fresh.name = free_name.toStdString();
  if (book_.add(fresh, tr("group %1").arg(free_name)).isEmpty()) return;
  show_group(free_name);
  auto* field = form_->findChild<QLineEdit*>(QStringLiteral("groups_name"));
  field->setFocus();
  field->selectAll();
}

void GroupsPage::remove_group() {
  const TreeGroup* const group = chosen();
  if (group == nullptr) return;
  const QString name = group_name(group->profile);
  if (!group->is_common) {
    form_->drop_typing();
    book_.remove(*group->stored, tr("group %1 removed").arg(name));
    return;
  }
  (void)save(tr("offer"), [](SpeciesProfile& profile) -> Problems {
    profile.left_out = true;
    return {};
  });
  emit book_.told(tr("%1 is not offered any more; \u201cRestore\u201d brings it back.").arg(name));
}

void GroupsPage::restore_group() {
  const TreeGroup* const group = chosen();
  if (group == nullptr || !group->stored || !group->is_common) return;
  const QString name = group_name(group->profile);
  // First it is offered again as the grower had it, then it is common practice's.
  if (group->profile.left_out) {
    const auto common = std::ranges::find(common_profiles(), current_, &SpeciesProfile::name);
    SpeciesProfile offered = group->profile;
    offered.left_out = false;
    if (offered != *common) {
      book_.replace(*group->stored, offered, tr("group %1 restored").arg(name));
      return;
    }
  }
  book_.remove(*group->stored, tr("group %1 restored").arg(name));
}

void GroupsPage::set_units(UnitSystem units) {
  units_ = units;
  form_->set_units(units);
  refresh();
}

void GroupsPage::show_group(const QString& name) {
  const std::string wanted = name.toStdString();
  if (!std::ranges::any_of(groups_, [&](const TreeGroup& group) { return group.profile.name == wanted; })) return;
  if (wanted != current_) {
    gone_->leave();
    unread_.clear();
  }
  current_ = wanted;
  book_.end_typing();
  form_->refresh(true);
  refresh();
}

void GroupsPage::take_focus() { list_->setFocus(); }

bool GroupsPage::eventFilter(QObject* watched, QEvent* event) {
  if (watched == list_ && event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
    remove_group();
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

void GroupsPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void GroupsPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) refresh();
}

void GroupsPage::choose_row() {
  const int row = list_->currentRow();
  if (filling_ || row < 0 || row >= static_cast<int>(groups_.size())) return;
  show_group(to_qt(groups_[static_cast<std::size_t>(row)].profile.name));
}

void GroupsPage::refresh() {
  if (!isVisible()) return;
  try {
    groups_ = tree_groups(book_.workbook());
  } catch (const WorkbookTrouble& trouble) {
    return emit book_.told(sentence_text(trouble.problem()));
  }
  if (const auto renamed = std::ranges::find_if(groups_, [this](const TreeGroup& group) { return group.stored && stored_ == group.stored->id; });
      chosen() == nullptr && renamed != groups_.end())
    current_ = renamed->profile.name;
  if (chosen() == nullptr && stored_ && gone_->hold(ref_to(*stored_), to_qt(current_))) return refresh_list();
  const bool other = chosen() == nullptr;
  if (other) {
    current_ = groups_.front().profile.name;
    unread_.clear();
  }
  refresh_list();
  const TreeGroup& group = *chosen();
  stored_ = group.stored ? std::optional(group.stored->id) : std::nullopt;
  gone_->is_back();
  title_->setText(tr("%1: %2").arg(group_name(group.profile), group_state(group)));
  remove_->setText(group.is_common ? tr("&Leave out") : tr("Remo&ve"));
  remove_->setEnabled(!group.profile.left_out);
  restore_->setEnabled(group.is_common && group.stored.has_value());
  find_->setEnabled(!group.profile.left_out);
  kinds_->setCurrentIndex(group.profile.group ? kinds_->findData(static_cast<int>(*group.profile.group)) : 0);
  form_->refresh(other);
  refresh_wishes();
  fit();
}

void GroupsPage::refresh_list() {
  filling_ = true;
  list_->setRowCount(static_cast<int>(groups_.size()));
  for (int row = 0; row < list_->rowCount(); ++row) {
    const TreeGroup& group = groups_[static_cast<std::size_t>(row)];
    const QBrush ink = group.profile.left_out ? QBrush(current_colours().muted) : QBrush();
    for (const auto& [column, text] : {std::pair{group_name_column, group_name(group.profile)}, {group_state_column, group_state(group)}}) {
      QTableWidgetItem* item = typed_cell(*list_, row, column);
      item->setText(text);
      item->setToolTip(text);
      item->setForeground(ink);
    }
    if (group.profile.name == current_ && list_->currentRow() != row) list_->setCurrentCell(row, group_name_column);
  }
  filling_ = false;
}

void GroupsPage::refresh_wishes() {
  const TreeGroup* const group = chosen();
  if (group == nullptr) return;
  GroupSheet sheet = sheet_of(group->profile);
  QStringList faults;
  for (const auto& [row, unread] : unread_) {
    sheet.wishes[static_cast<std::size_t>(row)] = unread.typed;
    for (const Problem& problem : unread.problems) faults << with_label(wish_label(row, sheet.band, units_), sentence_text(problem, units_));
  }
  wishes_->show_wishes(sheet.wishes, sheet.band, units_, [this](WishRow row, const char* below) {
    const auto unread = unread_.find(row);
    QStringList sentences;
    if (unread != unread_.end()) {
      for (const Problem& problem : unread->second.problems)
        if (problem.where.pointer.ends_with(below)) sentences << sentence_text(problem, units_);
    }
    return semicolon_list(sentences);
  });
  faults.removeDuplicates();
  fault_->setText(faults.join(u'\n'));
  fault_->setVisible(!faults.isEmpty());
}

void GroupsPage::fit() {
  list_->setMinimumWidth(26 * list_->fontMetrics().averageCharWidth());
  const int around_words = room_beside_words(list_->fontMetrics());
  std::vector<int> widths;
  for (int column = 0; column < group_columns; ++column) {
    int widest = list_->fontMetrics().horizontalAdvance(list_->horizontalHeaderItem(column)->text());
    for (int row = 0; row < list_->rowCount(); ++row) widest = std::max(widest, list_->fontMetrics().horizontalAdvance(list_->item(row, column)->text()));
    widths.push_back(widest + around_words);
  }
  columns_->set_wanted(std::move(widths));
  wishes_->fit();
}

}  // namespace gritwright::desktop
