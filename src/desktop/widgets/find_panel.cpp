#include "find_panel.hpp"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTableWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "column_scroll.hpp"
#include "field_form.hpp"
#include "form_row.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "models/sheets_from_records.hpp"
#include "models/tree_groups.hpp"
#include "text.hpp"
#include "wish_table.hpp"

namespace gritwright::desktop {

namespace {

enum GrainColumn { grain_name, grain_stock, grain_price, grain_least, grain_most, grain_columns };
constexpr int most_grain_rows = 9;  // a longer list scrolls by itself
constexpr int most_pot_rows = 4;

/// Sentences of the faults at `place` and below it.
QString faults_below(const Faults& faults, const std::string& place, UnitSystem units) {
  QStringList sentences;
  for (const auto& [at, problem] : faults) {
    if (at == place || at.starts_with(place + "/")) sentences << sentence_text(problem, units);
  }
  sentences.removeDuplicates();
  return semicolon_list(sentences);
}

/// Where the shelf knows nothing and nothing was typed.
void say_why_empty(QTableWidgetItem& cell, const QString& why) {
  if (!cell.text().isEmpty() || !cell.toolTip().isEmpty()) return;
  cell.setToolTip(why);
  cell.setData(Qt::AccessibleDescriptionRole, why);
}

void set_muted(QLabel* label, const char* role) {
  label->setProperty("role", role);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
}

}  // namespace

FindPanel::FindPanel(Bench& bench, PartsFinder& finder, QWidget* parent) : QFrame(parent), bench_(bench), finder_(finder) {
  setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 10, 8);
  layout->setSpacing(6);
  layout->addWidget(first_choices());
  more_button_ = new QToolButton(this);
  more_button_->setObjectName(QStringLiteral("find_more"));
  more_button_->setText(tr("More"));
  more_button_->setAccessibleName(tr("More: wishes, limits and the grain to choose from"));
  more_button_->setCheckable(true);
  more_button_->setArrowType(Qt::RightArrow);
  more_button_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  more_button_->setMinimumHeight(28);
  layout->addWidget(more_button_);
  more_ = more();
  more_->hide();
  layout->addWidget(more_);
  connect(more_button_, &QToolButton::toggled, this, [this](bool on) {
    more_button_->setArrowType(on ? Qt::DownArrow : Qt::RightArrow);
    more_->setVisible(on);
    lay_out_now(*more_);
  });
  connect(&finder_, &PartsFinder::setup_changed, this, &FindPanel::refresh);
  connect(&bench_, &Bench::units_changed, this, &FindPanel::refresh);
}

QWidget* FindPanel::first_choices() {
  auto* box = new QWidget(this);
  QGridLayout* grid = form_grid(box);
  groups_ = new QComboBox(box);
  groups_->setObjectName(QStringLiteral("find_group"));
  groups_->setAccessibleName(tr("Group of trees"));
  groups_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  add_plain_row(*grid, *groups_, tr("Group of trees"));
  pots_ = new QComboBox(box);
  pots_->setObjectName(QStringLiteral("find_pot"));
  pots_->setAccessibleName(tr("Pot"));
  pots_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  add_plain_row(*grid, *pots_, tr("Pot"));
  pot_ = new QLabel(box);
  pot_->setObjectName(QStringLiteral("find_pot_words"));
  set_muted(pot_, "muted");
  grid->addWidget(pot_, grid->rowCount(), 0, 1, 3);
  trouble_ = new QLabel(box);
  trouble_->setObjectName(QStringLiteral("find_trouble"));
  set_muted(trouble_, "fault");
  grid->addWidget(trouble_, grid->rowCount(), 0, 1, 3);
  connect(groups_, &QComboBox::activated, this, [this](int index) { start_from_profile(groups_->itemData(index).toString()); });
  connect(pots_, &QComboBox::activated, this, &FindPanel::choose_pot);
  return box;
}

QWidget* FindPanel::more() {
  auto* box = new QWidget(this);
  auto* layout = new QVBoxLayout(box);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(6);
  wishes_ = new WishTable("wishes_table", tr("Wishes"), box);
  layout->addWidget(wishes_);
  wish_faults_ = new QLabel(box);
  wish_faults_->setObjectName(QStringLiteral("wish_faults"));
  set_muted(wish_faults_, "fault");
  layout->addWidget(wish_faults_);
  form_ = new FieldForm(bench_, [this] { return &finder_.setup().faults; }, box);
  const auto text = [](QString FindSheet::*member) { return [member](BenchState& state) -> QString* { return &(state.find.*member); }; };
  form_->add({QStringLiteral("find_dust"), tr("Dust is finer than"), Kind::aperture, [] { return tr("size of dust"); }, text(&FindSheet::dust_size), {"/dust"},
              tr("1 mm, less in very small pots"), {}, {}, {}});
  form_->add({QStringLiteral("find_need"), tr("Mixed litres needed"), Kind::volume, [] { return tr("litres needed"); }, text(&FindSheet::need), {"/need_l"}, {}, {},
              [this] {
                const auto& need = finder_.setup().need;
                if (!need) return tr("one filling of the pot");
                const QString litres = to_local(volume_text(in_l(*need), bench_.units()));
                return finder_.setup().further_pots.empty() ? tr("one filling: %1").arg(litres) : tr("one filling of each pot: %1").arg(litres);
              },
              {}});
  form_->add({QStringLiteral("find_components"), tr("Components, at most"), Kind::number, [] { return tr("components of a recipe"); }, text(&FindSheet::components),
              {"/parts/components"}, tr("1 to 6"), {}, {}, {}});
  whole_ = new QComboBox(box);
  whole_->setObjectName(QStringLiteral("find_whole"));
  whole_->addItems({tr("whole parts to scoop"), tr("free shares")});
  form_->add(tr("Recipes in"), whole_);
  connect(whole_, &QComboBox::activated, this, [this](int index) {
    bench_.edit(tr("whole parts"), {}, [&](BenchState& state) { state.find.whole = index == 0; });
  });
  form_->add({QStringLiteral("find_total"), tr("Parts in all, at most"), Kind::number, [] { return tr("parts of a recipe"); }, text(&FindSheet::total), {"/parts/total"},
              tr("1 to 20"), [this] { return bench_.state().find.whole; }, {}, {}});
  layout->addWidget(form_);
  further_pots_ = new QTableWidget(box);
  prepare_typed_table(*further_pots_, "further_pots_table", tr("Pots the mix should be good in too"), {tr("good in these pots too"), tr("filling, L")});
  layout->addWidget(further_pots_);
  candidates_ = new QTableWidget(box);
  prepare_typed_table(*candidates_, "candidates_table", tr("Grain to choose from"), {tr("take"), tr("stock, L"), tr("price/L"), tr("least %"), tr("most %")});
  layout->addWidget(candidates_);
  candidate_faults_ = new QLabel(box);
  candidate_faults_->setObjectName(QStringLiteral("candidate_faults"));
  set_muted(candidate_faults_, "fault");
  layout->addWidget(candidate_faults_);
  keep_profile_ = new QPushButton(tr("Keep for this group"), box);
  keep_profile_->setObjectName(QStringLiteral("keep_profile"));
  keep_profile_->setAccessibleName(tr("Start this group with these wishes from now on"));
  keep_profile_->setMinimumHeight(28);
  auto* groups = new QPushButton(tr("All groups..."), box);
  groups->setObjectName(QStringLiteral("find_groups_page"));
  groups->setAccessibleName(tr("See, change and add groups of trees"));
  groups->setMinimumHeight(28);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(keep_profile_);
  buttons->addWidget(groups);
  layout->addLayout(buttons);
  connect(groups, &QPushButton::clicked, this, &FindPanel::groups_wanted);
  connect(wishes_, &WishTable::wish_typed, this, &FindPanel::wish_typed);
  // The names have what the window leaves.
  for (const auto& [table, rows] : {std::pair{further_pots_, most_pot_rows}, {candidates_, most_grain_rows}}) {
    connect(table->horizontalHeader(), &QHeaderView::sectionResized, this, [table = table, rows = rows](int column, int, int width) {
      if (column == 0) fit_rows(*table, rows, width);
    });
  }
  connect(further_pots_, &QTableWidget::itemChanged, this, &FindPanel::further_pot_ticked);
  connect(candidates_, &QTableWidget::itemChanged, this, &FindPanel::candidate_typed);
  connect(keep_profile_, &QPushButton::clicked, this, [this] {
    const QString name = bench_.state().find.profile;
    const auto like = std::ranges::find(profiles_, name.toStdString(), &SpeciesProfile::name);
    if (like == profiles_.end()) return;
    if (const auto profile = profile_of(finder_.setup(), like->name, *like)) emit keep_profile_wanted(*profile);
  });
  return box;
}

void FindPanel::set_profiles(std::vector<SpeciesProfile> profiles) {
  profiles_ = std::move(profiles);
  refresh_choices();
}

void FindPanel::show_more(bool more) { more_button_->setChecked(more); }

void FindPanel::take_focus() {
  groups_->setFocus();
  scroll_to(*groups_, groups_->rect());
}

void FindPanel::start_from_profile(const QString& name) {
  const auto profile = std::ranges::find(profiles_, name.toStdString(), &SpeciesProfile::name);
  if (profile == profiles_.end()) {
    bench_.edit(tr("group of trees"), {}, [](BenchState& state) { state.find.profile.clear(); });
    return;
  }
  const auto before = bench_.evaluation().band;
  bench_.edit(tr("wishes for %1").arg(name), {}, [&](BenchState& state) { start_from(state, *profile); });
  const auto& band = bench_.evaluation().band;
  // Every page judges by it.
  if (before && band && *before != *band)
    emit bench_.told(tr("The wanted grain is now %1 to %2, as the group asks; undo brings back what was typed.")
                         .arg(to_local(size_text(band->from, bench_.units())), to_local(size_text(band->to, bench_.units()))));
}

void FindPanel::choose_pot(int index) {
  const QString id = pots_->itemData(index).toString();
  const auto& pots = finder_.shelf().pots;
  const auto chosen = std::ranges::find(pots, id, &ShelfPot::id);
  if (chosen == pots.end()) return;
  bench_.edit(tr("pot %1").arg(pots_->itemText(index)), {}, [&](BenchState& state) { state.pot = sheet_of(chosen->container); });
}

void FindPanel::wish_typed(WishRow row, const WishText& wish) {
  if (filling_) return;
  bench_.edit(tr("wish: %1").arg(label_of(row)), {}, [&](BenchState& state) { state.find.wish(row) = wish; });
}

QString FindPanel::label_of(WishRow row) const { return wish_label(row, bench_.evaluation().band, bench_.units()); }

void FindPanel::candidate_typed(const QTableWidgetItem* item) {
  if (filling_) return;
  const auto& grain = finder_.setup().grain;
  const auto at = static_cast<std::size_t>(item->row());
  if (at >= grain.size()) return;
  const ShelfItem& shelf = grain[at];
  const int column = item->column();
  const QString text = item->text().trimmed();
  const bool taken = item->checkState() == Qt::Checked;
  bench_.edit(tr("%1 as a candidate").arg(to_qt(shelf.candidate.component.name)), {}, [&](BenchState& state) {
    CandidateText& typed = state.find.candidate_to_change(shelf.key);
    if (column == grain_name) typed.use = taken == shelf.taken ? CandidateText::Use::by_shelf : taken ? CandidateText::Use::taken : CandidateText::Use::left_out;
    else if (column == grain_stock) typed.stock = kept_text(text, Kind::volume, bench_.units());
    else if (column == grain_price) typed.price = text;
    else if (column == grain_least) typed.least_share = text;
    else if (column == grain_most) typed.most_share = text;
    CandidateText nothing;
    nothing.key = shelf.key;
    if (typed == nothing) std::erase(state.find.candidates, nothing);
  });
}

void FindPanel::further_pot_ticked(const QTableWidgetItem* item) {
  if (filling_ || item->column() != 0) return;
  const QString id = item->data(Qt::UserRole).toString();
  const bool wanted = item->checkState() == Qt::Checked;
  bench_.edit(tr("further pot %1").arg(id), {}, [&](BenchState& state) {
    std::erase(state.find.also_pots, id);
    if (wanted) state.find.also_pots.push_back(id);
  });
}

void FindPanel::refresh() {
  if (!isVisible()) return;
  filling_ = true;
  refresh_choices();
  refresh_wishes();
  refresh_further_pots();
  refresh_candidates();
  refresh_faults();
  filling_ = false;
  form_->refresh();
  fit();
}

void FindPanel::refresh_choices() {
  const FindSheet& sheet = bench_.state().find;
  const auto fill = [](QComboBox* box, const std::vector<std::pair<QString, QString>>& items, const QString& chosen) {
    bool same = box->count() == static_cast<int>(items.size());
    for (int i = 0; same && i < box->count(); ++i) {
      const auto& [text, key] = items[static_cast<std::size_t>(i)];
      same = box->itemText(i) == text && box->itemData(i).toString() == key;
    }
    if (!same) {
      box->clear();
      for (const auto& [text, key] : items) box->addItem(text, key);
    }
    box->setCurrentIndex(std::max(0, box->findData(chosen)));
  };
  std::vector<std::pair<QString, QString>> groups{{tr("choose a group"), {}}};
  for (const SpeciesProfile& profile : profiles_) groups.emplace_back(group_name(profile), to_qt(profile.name));
  fill(groups_, groups, sheet.profile);
  std::vector<std::pair<QString, QString>> pots{{bench_.evaluation().pot ? tr("as typed under Pot") : tr("choose a pot, or type its lengths"), {}}};
  QString chosen;
  for (const ShelfPot& pot : finder_.shelf().pots) {
    const QString name = pot.container.name.empty() ? pot.id : QStringLiteral("%1 %2").arg(pot.id, to_qt(pot.container.name));
    pots.emplace_back(name, pot.id);
    if (sheet_of(pot.container) == bench_.state().pot) chosen = pot.id;
  }
  fill(pots_, pots, chosen);
  whole_->setCurrentIndex(sheet.whole ? 0 : 1);
  const auto& pot = bench_.evaluation().pot;
  pot_->setText(pot ? tr("%1 deep to the fill line, %2; wanted grain and litres below are for this pot.")
                          .arg(to_local(depth_text(pot->filled_depth(), bench_.units())), to_local(volume_text(in_ml(pot->volume()) / 1000, bench_.units())))
                    : tr("Type its lengths under “By hand”, or choose one of the record."));
}

void FindPanel::refresh_wishes() {
  wishes_->show_wishes(bench_.state().find.wishes, bench_.evaluation().band, bench_.units(), [this](WishRow row, const char* below) {
    return fault_sentences(finder_.setup().faults, {"/wishes/" + std::to_string(static_cast<int>(row)) + below}, bench_.units());
  });
}

void FindPanel::refresh_further_pots() {
  const auto& pots = finder_.shelf().pots;
  const UnitSystem units = bench_.units();
  further_pots_->setVisible(!pots.empty());
  further_pots_->setHorizontalHeaderLabels({tr("good in these pots too"), tr("filling, %1").arg(unit_of(Kind::volume, units))});
  further_pots_->setRowCount(static_cast<int>(pots.size()));
  for (int line = 0; line < further_pots_->rowCount(); ++line) {
    const ShelfPot& pot = pots[static_cast<std::size_t>(line)];
    const QString name = pot.container.name.empty() ? pot.id : QStringLiteral("%1 %2").arg(pot.id, to_qt(pot.container.name));
    QTableWidgetItem* chosen = typed_cell(*further_pots_, line, 0);
    set_typed_cell(*chosen, name, {}, false, true);
    chosen->setData(Qt::UserRole, pot.id);
    chosen->setToolTip(name);
    chosen->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    chosen->setCheckState(std::ranges::count(bench_.state().find.also_pots, pot.id) > 0 ? Qt::Checked : Qt::Unchecked);
    QTableWidgetItem* litres = typed_cell(*further_pots_, line, 1);
    set_typed_cell(*litres, shown_text(number_text(in_ml(PotGeometry(pot.container).main_mix_volume()) / 1000, 3), Kind::volume, units), {}, false, true);
    litres->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
  }
}

void FindPanel::refresh_candidates() {
  const FindSetup& setup = finder_.setup();
  const FindSheet& sheet = bench_.state().find;
  const UnitSystem units = bench_.units();
  candidates_->setHorizontalHeaderLabels({tr("take"), tr("stock, %1").arg(unit_of(Kind::volume, units)), tr("price/L"), tr("least %"), tr("most %")});
  candidates_->setRowCount(static_cast<int>(setup.grain.size()));
  for (int line = 0; line < candidates_->rowCount(); ++line) {
    const auto at = static_cast<std::size_t>(line);
    const ShelfItem& item = setup.grain[at];
    const CandidateText* const found = sheet.candidate(item.key);
    const CandidateText typed = found != nullptr ? *found : CandidateText{};
    const std::string place = "/candidates/" + item.key.toStdString();
    const auto fault = [&](const char* below) { return fault_sentences(setup.faults, {place + below}, units); };
    QTableWidgetItem* name = typed_cell(*candidates_, line, grain_name);
    QString told = to_qt(item.candidate.component.name);
    if (item.is_printed_size) told = tr("%1 (not sieved)").arg(told);
    if (item.reserved) told = tr("%1, %2 reserved").arg(told, to_local(volume_text(in_l(*item.reserved), units)));
    set_typed_cell(*name, told, {}, false, true);
    name->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    name->setCheckState(std::ranges::find(setup.taken, at) != setup.taken.end() ? Qt::Checked : Qt::Unchecked);
    name->setToolTip(item.reserved ? tr("%1 of it are reserved for a mix").arg(to_local(volume_text(in_l(*item.reserved), units))) : told);
    // What the shelf says is shown as text that was not typed; what was typed over it stands out.
    const QString stock = item.candidate.stock ? number_text(in_l(*item.candidate.stock), 3) : QString();
    set_typed_cell(*typed_cell(*candidates_, line, grain_stock), shown_text(typed.stock.isEmpty() ? stock : typed.stock, Kind::volume, units), fault("/stock_l"), true, !typed.stock.isEmpty());
    const QString price = item.candidate.price ? QLocale().toString(item.candidate.price->value(), 'f', 2) : QString();
    set_typed_cell(*typed_cell(*candidates_, line, grain_price), typed.price.isEmpty() ? price : typed.price, fault("/price_per_l"), true, !typed.price.isEmpty());
    const bool of_bag = item.source && item.source->kind == RecordKind::bag;
    say_why_empty(*candidates_->item(line, grain_stock), tr("Not known how much of it there is: type it, or leave it open."));
    say_why_empty(*candidates_->item(line, grain_price), of_bag ? tr("Its bag has no price or no litres: write them down there, or type what a litre costs.") : tr("Only bags have a price: type what a litre of this is worth, or leave it open."));
    set_typed_cell(*typed_cell(*candidates_, line, grain_least), typed.least_share, fault("/least"), true, true);
    set_typed_cell(*typed_cell(*candidates_, line, grain_most), typed.most_share, fault("/most"), true, true);
    for (int column = grain_stock; column < grain_columns; ++column) candidates_->item(line, column)->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
  }
}

void FindPanel::refresh_faults() {
  const FindSetup& setup = finder_.setup();
  const UnitSystem units = bench_.units();
  QStringList wishes;
  for (int line = 0; line < static_cast<int>(wish_rows); ++line) {
    const QString fault = faults_below(setup.faults, "/wishes/" + std::to_string(line), units);
    if (!fault.isEmpty()) wishes << with_label(label_of(static_cast<WishRow>(line)), fault);
  }
  wish_faults_->setText(wishes.join(u'\n'));
  wish_faults_->setVisible(!wishes.isEmpty());
  QStringList grain;
  if (const QString fault = fault_sentences(setup.faults, {"/candidates"}, units); !fault.isEmpty()) grain << fault;
  for (const ShelfItem& item : setup.grain) {
    const QString fault = faults_below(setup.faults, "/candidates/" + item.key.toStdString(), units);
    if (!fault.isEmpty()) grain << with_label(to_qt(item.candidate.component.name), fault);
  }
  candidate_faults_->setText(grain.join(u'\n'));
  candidate_faults_->setVisible(!grain.isEmpty());
  // Folded away, a fault must still be seen; and a wish out of reach is said before any search.
  QStringList trouble;
  if (!more_button_->isChecked() && !setup.faults.empty()) trouble << wishes << grain << (wishes.isEmpty() && grain.isEmpty() ? QStringList{tr("See the marked fields under \u201cMore\u201d.")} : QStringList{});
  for (const Note& note : setup.out_of_reach) {
    const auto at = note.facts.find("wish");
    const double* number = at != note.facts.end() ? std::get_if<double>(&at->second) : nullptr;
    const auto wish = number != nullptr ? static_cast<std::size_t>(*number) : setup.wish_of.size();
    if (wish >= setup.wish_of.size()) continue;
    const int row = setup.wish_of[wish];
    const QString name = row >= 0 ? label_of(static_cast<WishRow>(row)) : tr("the share of a candidate");
    trouble << tr("\u201c%1\u201d cannot be had: nothing on the shelf comes near it, and so no mix does. Loosen it, or add grain.").arg(name);
  }
  trouble_->setText(trouble.join(u'\n'));
  trouble_->setVisible(!trouble.isEmpty());
  const bool has_profile = std::ranges::any_of(profiles_, [&](const SpeciesProfile& one) { return to_qt(one.name) == bench_.state().find.profile; });
  keep_profile_->setEnabled(has_profile && setup.problem.has_value());
  keep_profile_->setToolTip(has_profile ? QString() : tr("Choose a group first"));
}

void FindPanel::fit() {
  wishes_->fit();
  fit_columns(*further_pots_);
  fit_columns(*candidates_);
  fit_rows(*further_pots_, most_pot_rows, further_pots_->columnWidth(0));
  fit_rows(*candidates_, most_grain_rows, candidates_->columnWidth(0));
}

void FindPanel::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) refresh();
}

}  // namespace gritwright::desktop
