#include "root_plan_tab.hpp"

#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QRegularExpression>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <utility>

#include "charts/picture_tabs.hpp"
#include "charts/root_plan_view.hpp"
#include "charts/root_section_view.hpp"
#include "gritwright/formats/number.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "gritwright/models/root_history.hpp"
#include "gritwright/models/root_mix.hpp"
#include "gritwright/report/root_plan_report.hpp"
#include "gritwright/report/root_plan_sheet.hpp"
#include "models/figures.hpp"
#include "models/pot_library.hpp"
#include "print/pdf.hpp"
#include "text.hpp"
#include "trees_tab.hpp"
#include "widgets/caution_bar.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/figure_panel.hpp"
#include "widgets/gone_notice.hpp"
#include "widgets/record_form.hpp"
#include "widgets/record_list_side.hpp"

namespace gritwright::desktop {

namespace {

constexpr int as_present_pot = -1;  // beside the forms of a block

Result<double> plan_number(const std::string& text) { return parse_number(text, DecimalMark::point_or_comma); }

QString plan_length_text(Length length, UnitSystem units) { return to_local(depth_text(Depth(length), units)); }

QComboBox* plan_choice(QWidget* parent, const char* object_name, const QString& name) {
  auto* box = new QComboBox(parent);
  box->setObjectName(QString::fromLatin1(object_name));
  box->setAccessibleName(name);
  box->setMinimumHeight(28);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(10);
  return box;
}

QLabel* plan_fault_label(QWidget* parent, const char* object_name) {
  auto* label = new QLabel(parent);
  label->setObjectName(QString::fromLatin1(object_name));
  label->setProperty("role", "fault");
  label->setWordWrap(true);
  label->hide();
  return label;
}

QString order_words(const RootMassPlan& plan) {
  QStringList words;
  for (const Direction direction : plan.cut_order) words << direction_text(direction);
  return words.join(QStringLiteral(", "));
}

/// Words of the window's language, or those of a file.
Problems take_order(RootMassPlan& plan, const QString& text) {
  plan.cut_order.clear();
  QStringList known;
  for (const Direction direction : directions) known << direction_text(direction);
  for (const QString& word : text.split(QRegularExpression(QStringLiteral("[,;\\s]+")), Qt::SkipEmptyParts)) {
    const auto found = std::ranges::find_if(directions, [&](Direction direction) {
      return word.compare(direction_text(direction), Qt::CaseInsensitive) == 0 || word.toLower().toStdString() == direction_name(direction);
    });
    if (found == directions.end()) return Problems{Problem{"record.unknown-word", {}, {{"text", word.toStdString()}, {"expected", known.join(QStringLiteral(", ")).toStdString()}}}};
    plan.cut_order.push_back(*found);
  }
  return {};
}

void tell_fault(QLabel& label, const QString& text) {
  label.setText(text);
  label.setVisible(!text.isEmpty());
}

}  // namespace

RootPlanTab::RootPlanTab(RecordBook& book, const Catalogue& catalogue, QWidget* parent) : QWidget(parent), book_(book), desk_(new RootPlanDesk(book, catalogue, this)) {
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 8, 0, 0);
  auto* splitter = new QSplitter(Qt::Horizontal, this);
  splitter->setObjectName(QStringLiteral("plan_splitter"));
  splitter->setChildrenCollapsible(false);
  splitter->setHandleWidth(8);
  auto* left = new QSplitter(Qt::Vertical, splitter);
  left->setObjectName(QStringLiteral("plan_left_splitter"));
  left->setChildrenCollapsible(false);
  left->setHandleWidth(8);
  left->addWidget(list_side());
  auto* forms = new QWidget(left);
  auto* form_layout = new QVBoxLayout(forms);
  form_layout->setContentsMargins(0, 0, 0, 0);
  form_layout->addWidget(form_side(), 1);
  gone_ = new GoneNotice(book_, QStringLiteral("plan"), forms_, {}, forms);
  form_layout->insertWidget(0, gone_);
  left->addWidget(forms);
  left->setSizes({190, 500});
  splitter->addWidget(left);
  answer_ = answer_side();
  splitter->addWidget(answer_);
  splitter->setSizes({480, 780});
  splitter->setStretchFactor(1, 1);
  layout->addWidget(splitter);
  connect(list_, &RecordListSide::chosen, this, &RootPlanTab::chosen);
  list_->set_hold([this](const QString& id) { return gone_->hold({RecordKind::root_mass_plan, id.toStdString()}); });
  connect(gone_, &GoneNotice::let_go, list_, &RecordListSide::look_again);
  for (RecordForm* form : forms_) connect(&book_, &RecordBook::undone, form, &RecordForm::forget_typing);
  connect(&book_, &RecordBook::changed, this, &RootPlanTab::refresh);
  connect(desk_, &RootPlanDesk::changed, this, &RootPlanTab::refresh);
  connect(desk_, &RootPlanDesk::answered, this, &RootPlanTab::refresh_answer);
  chosen();
}

QWidget* RootPlanTab::list_side() {
  auto* side = new QWidget(this);
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* line = new QHBoxLayout;
  auto* label = new QLabel(tr("&Tree"), side);
  // An underlined first letter is drawn without the kerning that its width was measured with.
  label->setContentsMargins(0, 0, 2, 0);
  trees_ = plan_choice(side, "plan_tree", tr("Tree to plan for"));
  label->setBuddy(trees_);
  auto* add = new QPushButton(tr("&Begin a plan"), side);
  add->setObjectName(QStringLiteral("plan_add"));
  add->setAccessibleName(tr("Begin a plan for this tree"));
  add->setMinimumHeight(28);
  connect(add, &QPushButton::clicked, this, &RootPlanTab::add_plan);
  line->addWidget(label);
  line->addWidget(trees_, 1);
  line->addWidget(add);
  layout->addLayout(line);
  tree_fault_ = plan_fault_label(side, "plan_tree_fault");
  layout->addWidget(tree_fault_);
  const RecordListSide::Names names{QStringLiteral("plans"), tr("Root-mass plans"), tr("plan by number or name"), tr("No plans yet. Choose a tree above and begin one."), tr("for tree")};
  list_ = new RecordListSide(book_, RecordKind::root_mass_plan, names, [this](const RecordLine& row) {
    const auto plan = book_.workbook().find(Id<KeptRootMassPlan>{row.ref.id});
    return plan && plan->record.tree ? to_qt(plan->record.tree->text) : QString();
  }, side);
  layout->addWidget(list_, 1);
  return side;
}

RecordForm* RootPlanTab::new_form(QWidget* parent) {
  auto* form = new RecordForm(parent);
  connect(form, &RecordForm::typing_ended, this, [this] { book_.end_typing(); });
  forms_.push_back(form);
  return form;
}

void RootPlanTab::add_row(RecordForm& form, const char* name, const QString& label, Kind kind, const QString& hint, std::function<QString(const RootMassPlan&)> show,
                          std::function<Problems(RootMassPlan&, const QString&)> set, std::function<bool()> is_shown) {
  QString what = label;
  what.remove(u'&');
  form.add({QString::fromLatin1(name), label, kind, hint, [this, show] { return desk_->plan() ? show(*desk_->plan()) : QString(); },
            [this, what, set](const QString& text) -> Problems {
              if (!desk_->plan()) return desk_->current().isEmpty() ? Problems{} : Problems{not_there({RecordKind::root_mass_plan, desk_->current().toStdString()})};
              // Read first: what can't be read must not look like a change.
              RootMassPlan tried = *desk_->plan();
              if (Problems problems = set(tried, text.trimmed()); !problems.empty()) return problems;
              return desk_->save(what, [&](RootMassPlan& plan) { plan = tried; });
            },
            std::move(is_shown)});
}

void RootPlanTab::add_length(RecordForm& form, const char* name, const QString& label, const QString& hint, std::function<std::optional<Length>(const RootMassPlan&)> get,
                             std::function<void(RootMassPlan&, std::optional<Length>)> set, std::function<bool()> is_shown) {
  add_row(form, name, label, Kind::length, hint,
          [get](const RootMassPlan& plan) {
            const auto length = get(plan);
            return length ? number_text(in_cm(*length), 6) : QString();
          },
          [set](RootMassPlan& plan, const QString& text) -> Problems {
            if (text.isEmpty()) return set(plan, std::nullopt), Problems{};
            const auto length = parse_length(text.toStdString(), LengthUnit::centimetre);
            if (!length) return length.problems();
            return set(plan, *length), Problems{};
          },
          std::move(is_shown));
}

void RootPlanTab::add_angle(RecordForm& form, const char* name, const QString& label, const QString& hint, std::function<std::optional<Angle>(const RootMassPlan&)> get,
                            std::function<void(RootMassPlan&, std::optional<Angle>)> set) {
  add_row(form, name, label, Kind::number, hint,
          [get](const RootMassPlan& plan) {
            const auto angle = get(plan);
            return angle ? number_text(in_deg(*angle), 5) : QString();
          },
          [set](RootMassPlan& plan, const QString& text) -> Problems {
            if (text.isEmpty()) return set(plan, std::nullopt), Problems{};
            const auto degrees = plan_number(text.toStdString());
            if (!degrees) return degrees.problems();
            return set(plan, angle_deg(*degrees)), Problems{};
          });
}

void RootPlanTab::save(const QString& what, const std::function<void(RootMassPlan&)>& change) {
  for (const Problem& problem : desk_->save(what, change)) emit book_.told(sentence_text(problem, units_));
  book_.end_typing();
  refresh();
}

QWidget* RootPlanTab::form_side() {
  tabs_ = new QTabWidget(this);
  tabs_->setObjectName(QStringLiteral("plan_tabs"));
  tabs_->setAccessibleName(tr("Parts of the plan"));
  tabs_->setDocumentMode(true);
  tabs_->setUsesScrollButtons(true);
  tabs_->tabBar()->setMinimumHeight(32);
  tabs_->addTab(new ColumnScroll(mass_form(), tabs_), tr("Root mass"));
  tabs_->addTab(new ColumnScroll(pose_form(), tabs_), tr("Stand"));
  tabs_->addTab(new ColumnScroll(permission_form(), tabs_), tr("May come off"));
  tabs_->addTab(new ColumnScroll(bench_form(), tabs_), tr("Bench"));
  return tabs_;
}

QWidget* RootPlanTab::mass_form() {
  auto* form = new_form(this);
  groups_ = plan_choice(form, "plan_group", tr("Species group"));
  for (const SpeciesGroup group : species_groups) groups_->addItem(group_text(group), static_cast<int>(group));
  connect(groups_, &QComboBox::activated, this, [this](int index) {
    save(tr("group"), [&](RootMassPlan& plan) { plan.group = static_cast<SpeciesGroup>(groups_->itemData(index).toInt()); });
  });
  form->add(tr("Gro&up"), groups_);
  pots_ = plan_choice(form, "plan_pot", tr("Pot it goes into"));
  connect(pots_, &QComboBox::activated, this, [this](int index) { choose_pot(pots_->itemData(index).toString()); });
  form->add(tr("Into &pot"), pots_);
  mixes_ = plan_choice(form, "plan_mix", tr("Mix that fills the rest"));
  connect(mixes_, &QComboBox::activated, this, [this](int index) { desk_->fill_with(mixes_->itemData(index).toString()); });
  form->add(tr("&Mix"), mixes_);
  blocks_ = plan_choice(form, "plan_block", tr("Form of the root mass"));
  blocks_->addItem(tr("as its present pot"), as_present_pot);
  blocks_->addItem(tr("box"), static_cast<int>(BlockForm::box));
  blocks_->addItem(tr("upright elliptic"), static_cast<int>(BlockForm::elliptic));
  blocks_->addItem(tr("rounded"), static_cast<int>(BlockForm::rounded));
  connect(blocks_, &QComboBox::activated, this, [this](int index) { choose_block(blocks_->itemData(index).toInt()); });
  form->add(tr("&Root mass"), blocks_);
  present_pots_ = plan_choice(form, "plan_present_pot", tr("Present pot"));
  connect(present_pots_, &QComboBox::activated, this, [this](int index) {
    const auto pot = book_.workbook().find(Id<RecordedContainer>{present_pots_->itemData(index).toString().toStdString()});
    if (pot) save(tr("present pot"), [&](RootMassPlan& plan) { plan.block = AsPresentPot{pot->record.container}; });
  });
  form->add(tr("Present pot"), present_pots_);
  const auto is_box = [this] { return desk_->plan() && std::holds_alternative<BlockBox>(desk_->plan()->block); };
  const auto side = [&](const char* name, const QString& label, const QString& hint, Length BlockBox::*member) {
    add_length(*form, name, label, hint,
               [member](const RootMassPlan& plan) {
                 const auto* box = std::get_if<BlockBox>(&plan.block);
                 return box == nullptr ? std::nullopt : std::optional((*box).*member);
               },
               [member](RootMassPlan& plan, std::optional<Length> value) {
                 if (auto* box = std::get_if<BlockBox>(&plan.block)) (*box).*member = value.value_or(Length{});
               },
               is_box);
  };
  side("plan_block_length", tr("Root mass, length"), tr("left to right, from the old front"), &BlockBox::length);
  side("plan_block_width", tr("Root mass, width"), tr("front to back"), &BlockBox::width);
  side("plan_block_height", tr("Root mass, height"), tr("underside to surface"), &BlockBox::height);
  add_row(*form, "plan_block_exponent", tr("Roundness"), Kind::number, tr("2 an ellipsoid, 4 a box with soft edges"),
          [](const RootMassPlan& plan) {
            const auto* box = std::get_if<BlockBox>(&plan.block);
            return box != nullptr && box->exponent ? number_text(*box->exponent, 4) : QString();
          },
          [](RootMassPlan& plan, const QString& text) -> Problems {
            const auto value = plan_number(text.toStdString());
            if (!value) return value.problems();
            if (auto* box = std::get_if<BlockBox>(&plan.block)) box->exponent = *value;
            return {};
          },
          [this] {
            const auto* box = desk_->plan() ? std::get_if<BlockBox>(&desk_->plan()->block) : nullptr;
            return box != nullptr && box->form == BlockForm::rounded;
          });
  const auto base = [&](const char* name, const QString& label, const QString& hint, Length TreePoint::*member) {
    add_length(*form, name, label, hint, [member](const RootMassPlan& plan) { return plan.trunk_base ? std::optional((*plan.trunk_base).*member) : std::nullopt; },
               [member](RootMassPlan& plan, std::optional<Length> value) {
                 if (!value && !plan.trunk_base) return;
                 if (!plan.trunk_base) plan.trunk_base.emplace();
                 (*plan.trunk_base).*member = value.value_or(Length{});
                 if (plan.trunk_base == TreePoint{}) plan.trunk_base.reset();
               });
  };
  base("plan_base_right", tr("Trunk base, right"), tr("of the root mass's middle; empty: middle of its top"), &TreePoint::right);
  base("plan_base_back", tr("Trunk base, back"), tr("behind its middle"), &TreePoint::back);
  base("plan_base_up", tr("Trunk base, up"), tr("over its underside"), &TreePoint::up);
  add_row(*form, "plan_displaced", tr("Trunk and stones"), Kind::pot_volume, tr("under the soil; they take the place of mix"),
          [](const RootMassPlan& plan) { return in_ml(plan.displaced) > 0 ? number_text(in_ml(plan.displaced), 6) : QString(); },
          [](RootMassPlan& plan, const QString& text) -> Problems {
            if (text.isEmpty()) return plan.displaced = PotVolume{}, Problems{};
            const auto volume = parse_volume(text.toStdString(), VolumeUnit::millilitre);
            if (!volume) return volume.problems();
            return plan.displaced = PotVolume(*volume), Problems{};
          });
  add_length(*form, "plan_side_clearance", tr("New mix at the side"), tr("wanted; empty: 5 % of the length, 0.5 to 2 cm"), [](const RootMassPlan& plan) { return plan.side_clearance; },
             [](RootMassPlan& plan, std::optional<Length> value) { plan.side_clearance = value; });
  add_length(*form, "plan_below_clearance", tr("New mix below"), tr("wanted; empty: 15 % of the depth, 0.5 to 1.5 cm"), [](const RootMassPlan& plan) { return plan.below_clearance; },
             [](RootMassPlan& plan, std::optional<Length> value) { plan.below_clearance = value; });
  return form;
}

QWidget* RootPlanTab::pose_form() {
  auto* form = new_form(this);
  add_angle(*form, "plan_turn", tr("Turn, degrees"), tr("the new front; from right toward back"), [](const RootMassPlan& p) { return std::optional(p.pose.turn); },
            [](RootMassPlan& p, std::optional<Angle> v) { p.pose.turn = v.value_or(Angle{}); });
  add_angle(*form, "plan_turn_most", tr("may be turned by"), tr("degrees either way, to fit"), [](const RootMassPlan& p) { return std::optional(p.turn_most); },
            [](RootMassPlan& p, std::optional<Angle> v) { p.turn_most = v.value_or(Angle{}); });
  add_angle(*form, "plan_tip", tr("Tip, degrees"), tr("0 to 90"), [](const RootMassPlan& p) { return std::optional(p.pose.tip); },
            [](RootMassPlan& p, std::optional<Angle> v) { p.pose.tip = v.value_or(Angle{}); });
  add_angle(*form, "plan_tip_toward", tr("Tip toward, degrees"), tr("0 right, 90 back, 180 left"), [](const RootMassPlan& p) { return std::optional(p.pose.tip_toward); },
            [](RootMassPlan& p, std::optional<Angle> v) { p.pose.tip_toward = v.value_or(Angle{}); });
  add_angle(*form, "plan_tip_least", tr("Tip at least, degrees"), tr("empty: it may be set upright"), [](const RootMassPlan& p) { return p.tip_least; },
            [](RootMassPlan& p, std::optional<Angle> v) { p.tip_least = v; });
  add_length(*form, "plan_right", tr("Trunk base stands right"), tr("of the pot's middle; empty: root mass in the middle"), [](const RootMassPlan& p) { return p.pose.right; },
             [](RootMassPlan& p, std::optional<Length> v) { p.pose.right = v; });
  add_length(*form, "plan_back", tr("Trunk base stands back"), tr("of the pot's middle"), [](const RootMassPlan& p) { return p.pose.back; },
             [](RootMassPlan& p, std::optional<Length> v) { p.pose.back = v; });
  add_length(*form, "plan_trunk_height", tr("Trunk base over floor"), tr("empty: at its least height over the soil"),
             [](const RootMassPlan& p) { return p.pose.trunk_base ? std::optional(p.pose.trunk_base->quantity()) : std::nullopt; },
             [](RootMassPlan& p, std::optional<Length> v) { p.pose.trunk_base = v ? std::optional(Depth(*v)) : std::nullopt; });
  add_length(*form, "plan_trunk_least", tr("Trunk base over soil"), tr("at least; the trunk is never buried"), [](const RootMassPlan& p) { return std::optional(p.trunk_height_least.quantity()); },
             [](RootMassPlan& p, std::optional<Length> v) { p.trunk_height_least = Depth(v.value_or(Length{})); });
  return form;
}

QWidget* RootPlanTab::permission_form() {
  auto* form = new_form(this);
  styles_ = plan_choice(form, "plan_cut_style", tr("How it is cut"));
  styles_->addItem(tr("along the pot's wall"), static_cast<int>(CutStyle::wall));
  styles_->addItem(tr("straight, as a saw goes"), static_cast<int>(CutStyle::straight));
  connect(styles_, &QComboBox::activated, this, [this](int index) { save(tr("cut style"), [&](RootMassPlan& plan) { plan.cut_style = static_cast<CutStyle>(styles_->itemData(index).toInt()); }); });
  form->add(tr("Cut"), styles_);
  add_row(*form, "plan_cut_order", tr("Cut in this order"), Kind::words, tr("like: up, right; empty: largest first"), &order_words, &take_order);
  const auto yes_or_no = [&](QComboBox*& box, const char* name, const QString& accessible, const QString& label, const QString& what, bool RootMassPlan::*member) {
    box = plan_choice(form, name, accessible);
    box->addItem(tr("no"), false);
    box->addItem(tr("yes"), true);
    connect(box, &QComboBox::activated, this, [this, what, member, box](int index) { save(what, [&](RootMassPlan& plan) { plan.*member = box->itemData(index).toBool(); }); });
    form->add(label, box);
  };
  yes_or_no(bare_root_, "plan_bare_root", tr("All ground off on purpose: bare-rooted"), tr("Bare-root it"), tr("bare-rooting"), &RootMassPlan::bare_root);
  yes_or_no(bare_before_, "plan_bare_before", tr("It was bare-rooted last time"), tr("Bare-rooted last time"), tr("last bare-rooting"), &RootMassPlan::bare_rooted_last_time);
  const char* permission_names[] = {"plan_may_right", "plan_may_left", "plan_may_back", "plan_may_front", "plan_may_top", "plan_may_bottom"};
  for (const Face face : faces) {
    const auto at = static_cast<std::size_t>(face);
    add_length(*form, permission_names[at], tr("%1, at most").arg(old_face_text(face)), tr("0: nothing, a structural root; empty: not known"), [at](const RootMassPlan& p) { return p.permission[at]; },
               [at](RootMassPlan& p, std::optional<Length> v) { p.permission[at] = v; });
  }
  const char* combed_names[] = {"plan_combed_right", "plan_combed_left", "plan_combed_back", "plan_combed_front", "plan_combed_top", "plan_combed_bottom"};
  for (const Face face : faces) {
    add_length(*form, combed_names[static_cast<std::size_t>(face)], tr("%1, combed").arg(old_face_text(face)), tr("depth without a cut; empty: not combed"),
               [face](const RootMassPlan& p) {
                 const auto found = std::ranges::find(p.combed, face, &CombedFace::face);
                 return found == p.combed.end() ? std::nullopt : std::optional(found->depth);
               },
               [face](RootMassPlan& p, std::optional<Length> v) {
                 const auto found = std::ranges::find(p.combed, face, &CombedFace::face);
                 if (found != p.combed.end() && v) found->depth = *v;
                 else if (found != p.combed.end()) p.combed.erase(found);
                 else if (v) p.combed.push_back({face, *v});
               });
  }
  const auto share = [&](const char* name, const QString& label, std::optional<double> RootMassPlan::*member) {
    add_row(*form, name, label, Kind::percent, tr("of the root mass; empty: the group's"),
            [member](const RootMassPlan& p) { return p.*member ? number_text(*(p.*member) * 100, 4) : QString(); },
            [member](RootMassPlan& p, const QString& text) -> Problems {
              if (text.isEmpty()) return (p.*member).reset(), Problems{};
              const auto value = parse_percent(text.toStdString());
              if (!value) return value.problems();
              p.*member = *value;
              return {};
            });
  };
  add_length(*form, "plan_working_depth", tr("Disturbed beside a cut"), tr("to this depth; empty: 3 % of the length, 0.3 to 2 cm"), [](const RootMassPlan& p) { return p.working_depth; },
             [](RootMassPlan& p, std::optional<Length> v) { p.working_depth = v; });
  share("plan_untouched_least", tr("Untouched, at least"), &RootMassPlan::untouched_least);
  share("plan_removed_most", tr("Taken off, at most"), &RootMassPlan::removed_most);
  add_row(*form, "plan_interval", tr("In stages: years between"), Kind::number, tr("whole years; empty: the group's least interval"),
          [](const RootMassPlan& p) { return p.interval_years ? QString::number(*p.interval_years) : QString(); },
          [](RootMassPlan& p, const QString& text) -> Problems {
            if (text.isEmpty()) return p.interval_years.reset(), Problems{};
            const auto years = plan_number(text.toStdString());
            if (!years) return years.problems();
            if (*years != std::floor(*years) || std::abs(*years) > 1000) return Problems{Problem{"record.not-whole", {}, {{"number", *years}}}};
            return p.interval_years = static_cast<int>(*years), Problems{};
          });
  return form;
}

QWidget* RootPlanTab::bench_form() {
  auto* side = new QWidget(this);
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* form = new_form(side);
  library_ = plan_choice(form, "plan_library", tr("Free pots of the library"));
  library_->addItem(tr("leave them out"), false);
  library_->addItem(tr("try them where this pot is too small"), true);
  connect(library_, &QComboBox::activated, this, [this](int index) {
    save(tr("free pots"), [&](RootMassPlan& plan) {
      plan.free_pots.clear();
      if (!library_->itemData(index).toBool()) return;
      for (const auto& pot : free_pots(book_.workbook())) plan.free_pots.push_back(pot.record.container);
    });
  });
  form->add(tr("Free pots"), library_);
  stop_direction_ = plan_choice(form, "plan_stop_direction", tr("Where the cut stopped"));
  for (const Direction direction : directions) stop_direction_->addItem(direction_text(direction), static_cast<int>(direction));
  stop_direction_->setCurrentIndex(static_cast<int>(Direction::up));
  form->add(tr("Cut stopped, from"), stop_direction_);
  stop_depth_ = new QLineEdit(form);
  stop_depth_->setObjectName(QStringLiteral("plan_stop_depth"));
  stop_depth_->setAccessibleName(tr("It stopped at"));
  stop_depth_->setPlaceholderText(tr("depth from the farthest point, like 3 cm"));
  form->add(tr("It stopped at"), stop_depth_);
  connect(stop_depth_, &QLineEdit::returnPressed, this, &RootPlanTab::stop_at_bench);
  layout->addWidget(form);
  stop_fault_ = plan_fault_label(side, "plan_stop_fault");
  layout->addWidget(stop_fault_);
  auto* line = new QHBoxLayout;
  auto* stop = new QPushButton(tr("Stopped there: plan the rest"), side);
  stop->setObjectName(QStringLiteral("plan_stop"));
  stop->setAccessibleName(tr("Stopped there: plan the rest"));
  auto* clear = new QPushButton(tr("Clear"), side);
  clear->setObjectName(QStringLiteral("plan_stop_clear"));
  clear->setAccessibleName(tr("Clear what was stopped"));
  for (QPushButton* button : {stop, clear}) {
    button->setMinimumHeight(28);
    line->addWidget(button);
  }
  line->addStretch(1);
  layout->addLayout(line);
  connect(stop, &QPushButton::clicked, this, &RootPlanTab::stop_at_bench);
  connect(clear, &QPushButton::clicked, this, [this] { save(tr("stopped cuts"), [](RootMassPlan& plan) { plan.stopped.clear(); }); });
  stops_ = new QLabel(side);
  stops_->setObjectName(QStringLiteral("plan_stops"));
  stops_->setWordWrap(true);
  layout->addWidget(stops_);
  layout->addStretch(1);
  return side;
}

QWidget* RootPlanTab::answer_side() {
  auto* splitter = new QSplitter(Qt::Vertical, this);
  splitter->setObjectName(QStringLiteral("plan_answer_splitter"));
  splitter->setChildrenCollapsible(false);
  splitter->setHandleWidth(8);
  auto* top = new QWidget(splitter);
  auto* layout = new QVBoxLayout(top);
  layout->setContentsMargins(0, 0, 0, 0);
  pictures_ = new PictureTabs(top);
  pictures_->setObjectName(QStringLiteral("plan_pictures"));
  pictures_->setAccessibleName(tr("Pictures of the plan"));
  view_ = new RootPlanView(*desk_, pictures_);
  pictures_->add({tr("From the side and above"), view_, "plan_table", [this] { return view_->table(); }, [this] { return view_->data(); }});
  section_ = new RootSectionView(*desk_, pictures_);
  pictures_->add({tr("Air and water"), section_, "plan_section_table", [this] { return section_->table(); }, [this] { return section_->data(); }});
  layout->addWidget(pictures_, 1);
  auto* line = new QHBoxLayout;
  auto* label = new QLabel(tr("Sho&w plan"), top);
  plans_ = plan_choice(top, "plan_shown", tr("Plan shown"));
  label->setBuddy(plans_);
  connect(plans_, &QComboBox::activated, this, [this](int index) { desk_->choose(static_cast<std::size_t>(index)); });
  done_ = new QPushButton(tr("Write into &history"), top);
  done_->setObjectName(QStringLiteral("plan_done"));
  done_->setAccessibleName(tr("Done: write this plan into the tree's history"));
  done_->setMinimumHeight(28);
  connect(done_, &QPushButton::clicked, this, &RootPlanTab::write_into_history);
  line->addWidget(label);
  line->addWidget(plans_, 1);
  line->addWidget(done_);
  auto* print = new QPushButton(tr("&Print..."), top);
  print->setObjectName(QStringLiteral("plan_print"));
  print->setAccessibleName(tr("Print the root-plan sheet"));
  auto* pdf = new QPushButton(tr("PD&F..."), top);
  pdf->setObjectName(QStringLiteral("plan_pdf"));
  pdf->setAccessibleName(tr("Save the root-plan sheet as PDF"));
  for (QPushButton* button : {print, pdf}) {
    button->setMinimumHeight(28);
    line->addWidget(button);
  }
  connect(print, &QPushButton::clicked, this, &RootPlanTab::print_sheet);
  connect(pdf, &QPushButton::clicked, this, [this] {
    const QString file = QFileDialog::getSaveFileName(this, tr("Root-plan sheet as PDF"), tr("root plan %1.pdf").arg(desk_->current()), tr("PDF (*.pdf)"));
    if (!file.isEmpty()) save_sheet(file);
  });
  layout->addLayout(line);
  splitter->addWidget(top);
  auto* bottom = new QWidget(splitter);
  auto* answers = new QVBoxLayout(bottom);
  answers->setContentsMargins(0, 0, 0, 0);
  answers->addWidget(new CautionBar(QStringLiteral("roots"), tr("Lifting, blades, moss."),
                                    tr("Two people or a trolley for a heavy pot; cut away from the hand; gloves for sphagnum. General information; safety sheets, local codes and qualified advice prevail."), bottom));
  limits_ = new QLabel(bottom);
  limits_->setObjectName(QStringLiteral("plan_limits"));
  limits_->setWordWrap(true);
  limits_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  limits_->setFocusPolicy(Qt::NoFocus);
  steps_ = new QLabel(bottom);
  steps_->setObjectName(QStringLiteral("plan_steps"));
  steps_->setWordWrap(true);
  steps_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  steps_->setFocusPolicy(Qt::NoFocus);
  figures_ = new FigurePanel(bottom);
  stop_table_ = new QTableWidget(0, 5, bottom);
  stop_table_->setObjectName(QStringLiteral("plan_stop_table"));
  stop_table_->setAccessibleName(tr("If the upper surface stops"));
  stop_table_->setHorizontalHeaderLabels({tr("upper cut stops at"), tr("take below"), tr("trunk base"), tr("untouched"), tr("new mix")});
  stop_table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  stop_table_->setTabKeyNavigation(false);
  stop_table_->verticalHeader()->hide();
  answers->addWidget(limits_);
  answers->addWidget(steps_);
  answers->addWidget(figures_);
  answers->addWidget(stop_table_);
  answers->addStretch(1);
  splitter->addWidget(new ColumnScroll(bottom, splitter));
  splitter->setSizes({380, 320});
  return splitter;
}

void RootPlanTab::choose_block(int form) {
  save(tr("root mass"), [&](RootMassPlan& plan) {
    if (form == as_present_pot) {
      const auto pot = book_.workbook().find(Id<RecordedContainer>{present_pots_->currentData().toString().toStdString()});
      plan.block = AsPresentPot{pot ? pot->record.container : plan.pot};
      plan.trunk_base.reset();
      return;
    }
    BlockBox box;
    if (const auto* was = std::get_if<BlockBox>(&plan.block)) {
      box = *was;
    } else {
      const Container& present = std::get<AsPresentPot>(plan.block).pot;
      const PotGeometry geometry(present);
      const Section section = geometry.section_at(geometry.filled_depth());
      box.length = section.length;
      box.width = section.width;
      box.height = geometry.filled_depth().quantity();
    }
    box.form = static_cast<BlockForm>(form);
    box.exponent = box.form == BlockForm::rounded ? std::optional(box.exponent.value_or(3.5)) : std::nullopt;
    plan.block = box;
  });
}

void RootPlanTab::choose_pot(const QString& id) {
  const auto pot = book_.workbook().find(Id<RecordedContainer>{id.toStdString()});
  if (!pot) return;
  save(tr("pot"), [&](RootMassPlan& plan) {
    plan.pot = pot->record.container;
    plan.pose.right.reset();  // places belong to the pot they were chosen in
    plan.pose.back.reset();
    plan.pose.trunk_base.reset();
  });
}

void RootPlanTab::stop_at_bench() {
  const auto depth = parse_length(stop_depth_->text().trimmed().toStdString(), LengthUnit::centimetre);
  Problems problems = depth.problems();
  const auto direction = static_cast<Direction>(stop_direction_->currentData().toInt());
  if (depth) {
    problems = desk_->save(tr("stopped cut"), [&](RootMassPlan& plan) {
      std::erase_if(plan.stopped, [&](const StoppedCut& cut) { return cut.direction == direction; });
      plan.stopped.push_back({direction, *depth});
    });
    book_.end_typing();
  }
  tell_fault(*stop_fault_, problems.empty() ? QString() : sentence_text(problems.front(), units_));
  if (problems.empty()) stop_depth_->clear();
}

std::optional<PrintDocument> RootPlanTab::sheet() const {
  const RootPlanOutcome* outcome = desk_->outcome();
  if (outcome == nullptr || !outcome->answer || outcome->coarse) return std::nullopt;
  // The sheet's pictures are those of plan A, and so is its section.
  if (outcome->section && outcome->worked == 0) return root_plan_sheet(outcome->plan, *outcome->answer, units_, *outcome->section, outcome->mix_name, translated);
  return root_plan_sheet(outcome->plan, *outcome->answer, units_, translated);
}

bool RootPlanTab::save_sheet(const QString& file) {
  const auto document = sheet();
  if (!document) return false;
  const auto written = write_pdf(*document, file, units_ == UnitSystem::us ? Paper::letter : Paper::a4);
  emit book_.told(written ? tr("Saved %1").arg(file) : sentence_text(written.problems().front()));
  return written.ok();
}

void RootPlanTab::print_sheet() {
  const auto document = sheet();
  if (!document) return;
  QPrinter printer;
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() == QDialog::Accepted && !paint_pages(*document, printer)) emit book_.told(tr("The printer could not be reached."));
}

void RootPlanTab::write_into_history() {
  const WorkedPlan* worked = desk_->worked();
  const auto kept = desk_->kept();
  if (worked == nullptr || !kept || !kept->record.tree || !desk_->outcome() || desk_->outcome()->coarse) return;
  const auto tree = book_.workbook().find(*kept->record.tree);
  if (!tree) return;
  Repotting done = repotting_by(desk_->outcome()->plan, *worked);
  done.day = today();
  done.plan = Id<RootMassPlan>{kept->id.text};
  done.mix = kept->record.mix;
  if (worked->fits) {
    done.container = pot_in_library(book_.workbook(), pot_of(desk_->outcome()->plan, *worked));
  } else if (const Repotting* last = stands_in(tree->record)) {
    done.container = last->container;  // back into the old pot
  }
  Tree now = tree->record;
  now.trunk_base = trunk_base_after(desk_->outcome()->plan, *worked);
  done.due = std::exchange(now.due, std::nullopt);
  now.repottings.push_back(done);
  if (const Problems problems = check(now); !problems.empty()) {
    emit book_.told(sentence_text(problems.front(), units_));
    return;
  }
  const QString id = to_qt(tree->id.text);
  if (book_.replace(*tree, now, tr("repotting of tree %1 by plan %2").arg(id, to_qt(worked->name)))) emit book_.told(done.mix ? tr("Written into the history of tree %1; a repotting day also takes the grain from the stock.").arg(id)
                             : tr("Written into the history of tree %1; the mix is added on the Trees tab.").arg(id));
}

void RootPlanTab::plan_tree(const QString& tree) {
  refresh_choices();
  trees_->setCurrentIndex(std::max(0, trees_->findData(tree)));
  ListFilter of_tree;
  of_tree.about = RecordRef{RecordKind::tree, tree.toStdString()};
  const auto plans = book_.workbook().list(RecordKind::root_mass_plan, of_tree);
  if (plans.empty()) add_plan();
  else list_->show_record(to_qt(plans.front().ref.id));
}

void RootPlanTab::add_plan() {
  const QString tree = trees_->currentData().toString();
  const auto stored = book_.workbook().find(Id<Tree>{tree.toStdString()});
  if (!stored) return tell_fault(*tree_fault_, tr("There is no tree yet: add it on the Trees tab."));
  if (!stored->record.group) return tell_fault(*tree_fault_, tr("Tree %1 has no species group, so what it bears is not known: choose its group on the Trees tab.").arg(tree));
  tell_fault(*tree_fault_, {});
  const QString id = desk_->plan_for(tree);
  if (!id.isEmpty()) list_->show_record(id);
}

void RootPlanTab::remove_plan() {
  const auto stored = desk_->kept();
  if (!stored) return;
  if (book_.workbook().is_used(ref_to(stored->id))) {
    emit book_.told(tr("Plan %1 stays: a tree's history or a day names it.").arg(desk_->current()));
    return;
  }
  for (RecordForm* form : forms_) form->drop_typing();
  book_.remove(*stored, tr("root-mass plan %1 removed").arg(desk_->current()));
}

void RootPlanTab::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  chosen();
}

void RootPlanTab::set_units(UnitSystem units) {
  units_ = units;
  for (RecordForm* form : forms_) form->set_units(units);
  view_->set_units(units);
  section_->set_units(units);
  refresh();
}

void RootPlanTab::chosen() {
  if (list_->current() != desk_->current()) gone_->leave();
  book_.end_typing();
  desk_->open(list_->current());
  for (RecordForm* form : forms_) form->refresh(true);
  refresh();
}

void RootPlanTab::refresh_choices() {
  const auto fill = [this](QComboBox& box, RecordKind kind) {
    const QVariant was = box.currentData();
    box.clear();
    for (const RecordLine& line : book_.workbook().list(kind)) box.addItem(QStringLiteral("%1 %2").arg(to_qt(line.ref.id), to_qt(line.title)), to_qt(line.ref.id));
    box.setCurrentIndex(std::max(0, box.findData(was)));
  };
  fill(*trees_, RecordKind::tree);
  fill(*pots_, RecordKind::container);
  fill(*present_pots_, RecordKind::container);
  fill(*mixes_, RecordKind::mix);
  mixes_->insertItem(0, tr("none yet"), QString());
}

void RootPlanTab::refresh() {
  if (!isVisible()) return;
  refresh_choices();
  const auto& plan = desk_->plan();
  tabs_->setEnabled(plan || gone_->is_holding());
  answer_->setEnabled(plan.has_value());
  if (plan) {
    gone_->is_back();
    for (RecordForm* form : forms_) form->refresh(false);
    groups_->setCurrentIndex(groups_->findData(static_cast<int>(plan->group)));
    const auto* box = std::get_if<BlockBox>(&plan->block);
    blocks_->setCurrentIndex(blocks_->findData(box == nullptr ? as_present_pot : static_cast<int>(box->form)));
    const auto kept = desk_->kept();
    mixes_->setCurrentIndex(std::max(0, mixes_->findData(kept && kept->record.mix ? to_qt(kept->record.mix->text) : QString())));
    bare_root_->setCurrentIndex(plan->bare_root ? 1 : 0);
    bare_before_->setCurrentIndex(plan->bare_rooted_last_time ? 1 : 0);
    styles_->setCurrentIndex(styles_->findData(static_cast<int>(plan->cut_style)));
    library_->setCurrentIndex(plan->free_pots.empty() ? 0 : 1);
    // Plans hold their pots by value: the library's entry is the one that equals it.
    const auto select = [this](QComboBox& choices, const Container& pot) {
      const auto id = pot_in_library(book_.workbook(), pot);
      choices.setCurrentIndex(id ? choices.findData(to_qt(id->text)) : -1);
      choices.setPlaceholderText(tr("%1, as it was").arg(to_qt(pot.name)));
    };
    select(*pots_, plan->pot);
    present_pots_->setEnabled(box == nullptr);
    if (box == nullptr) select(*present_pots_, std::get<AsPresentPot>(plan->block).pot);
    QStringList stops;
    for (const StoppedCut& cut : plan->stopped) stops << tr("%1: stopped at %2").arg(direction_text(cut.direction), plan_length_text(cut.depth, units_));
    stops_->setText(stops.join(QStringLiteral("; ")));
  }
  refresh_answer();
}

QString RootPlanTab::steps_text(const WorkedPlan& worked) const {
  QStringList steps;
  for (const CombedFace& combed : worked.combed) steps << tr("comb the %1 %2 deep").arg(old_face_text(combed.face), plan_length_text(combed.depth, units_));
  for (const PlannedCut& cut : worked.cuts) steps << tr("take %1 off the %2 (now %3)").arg(plan_length_text(cut.depth, units_), old_face_text(cut.face), direction_text(cut.direction));
  if (worked.fits) steps << tr("stand the trunk base %1 over the floor, %2 right and %3 back of the middle").arg(to_local(depth_text(worked.trunk_base, units_)), plan_length_text(worked.right, units_), plan_length_text(worked.back, units_));
  else steps << tr("put it back into its old pot");
  QStringList rungs;
  for (const Rung rung : worked.rungs) rungs << rung_words(rung);
  QString text = tr("Plan %1: %2.").arg(to_qt(worked.name), rungs.isEmpty() ? tr("fits as it is") : rungs.join(QStringLiteral(", ")));
  for (qsizetype step = 0; step < steps.size(); ++step) text += QStringLiteral("\n%1. %2").arg(step + 1).arg(steps[step]);
  for (const Note& note : worked.cautions) text += QStringLiteral("\n%1 %2").arg(note.level == Level::warning ? tr("Caution:") : tr("Note:"), sentence_text(note, units_));
  return text;
}

void RootPlanTab::refresh_answer() {
  const RootPlanOutcome* outcome = desk_->outcome();
  const WorkedPlan* worked = desk_->worked();
  pictures_->refresh_table();
  const bool there = worked != nullptr;
  for (QWidget* widget : std::initializer_list<QWidget*>{steps_, figures_, plans_}) widget->setVisible(there);
  const auto kept = desk_->kept();
  done_->setEnabled(there && kept && kept->record.tree);
  if (!there) {
    QStringList sentences;
    if (outcome != nullptr) {
      for (const Problem& problem : outcome->problems) sentences << sentence_text(problem, units_);
    }
    limits_->setText(sentences.join(QStringLiteral("\n")));
    stop_table_->hide();
    return;
  }
  const RootPlanAnswer& answer = *outcome->answer;
  if (!outcome->coarse) {
    plans_->clear();
    for (const WorkedPlan& one : answer.plans) plans_->addItem(one.fits ? tr("plan %1").arg(to_qt(one.name)) : tr("plan %1, in stages").arg(to_qt(one.name)));
    plans_->setCurrentIndex(static_cast<int>(outcome->worked));
  }
  QStringList limits;
  for (const Limitation& limit : answer.limitations) limits << QStringLiteral("%1 %2").arg(direction_text(limit.direction), plan_length_text(limit.excess, units_));
  if (answer.corners_share >= 5e-4) limits << tr("corners %1 of the root mass").arg(to_local(percent_text(answer.corners_share)));
  QString text = limits.isEmpty() ? tr("Nothing limits the fit.") : tr("What limits the fit: %1.").arg(limits.join(QStringLiteral(", ")));
  if (outcome->growth) {
    QStringList growth;
    if (in_cm(outcome->growth->length) > 0) growth << tr("%1 longer").arg(plan_length_text(outcome->growth->length, units_));
    if (in_cm(outcome->growth->width) > 0) growth << tr("%1 wider").arg(plan_length_text(outcome->growth->width, units_));
    if (in_cm(outcome->growth->depth) > 0) growth << tr("%1 deeper").arg(plan_length_text(outcome->growth->depth, units_));
    text += QStringLiteral(" ") + tr("Smallest change of the pot that would fit: %1.").arg(growth.join(QStringLiteral(", ")));
  }
  for (const Note& note : answer.notes) text += QStringLiteral("\n") + sentence_text(note, units_);
  limits_->setText(text);
  steps_->setText(steps_text(*worked));
  const auto why = explain(outcome->plan, answer);
  const auto explained = [&](const char* key) {
    std::vector<Explanation> found;
    // The explanations are those of plan A.
    for (const Explanation& one : why) {
      if (one.figure == key && outcome->worked == 0) found.push_back(one);
    }
    return found;
  };
  FigureGroup group{QStringLiteral("plan"), tr("Plan %1 in figures").arg(to_qt(worked->name)), {}};
  const auto share = [](double value) { return to_local(percent_text(value)); };
  group.figures.push_back({QStringLiteral("plan_removed"), tr("taken off"), share(worked->removed_share), {}, explained("removed")});
  group.figures.push_back({QStringLiteral("plan_untouched"), tr("stays untouched"), share(worked->untouched_share), {}, explained("untouched")});
  if (worked->other_half) {
    group.figures.push_back({QStringLiteral("plan_left_again"), tr("untouched last time and again"), share(worked->other_half->left_again), {}, {}});
    group.figures.push_back({QStringLiteral("plan_worked_again"), tr("worked last time and again"), share(worked->other_half->worked_again), {}, {}});
  }
  group.figures.push_back({QStringLiteral("plan_fill"), tr("new mix, as it lies"), to_local(volume_text(in_ml(worked->fill) / 1000, units_)), {}, explained("fill")});
  if (worked->fits) {
    group.figures.push_back({QStringLiteral("plan_soil_line"), tr("soil line over the floor"), to_local(depth_text(worked->soil_line, units_)), {}, explained("soil_line")});
    group.figures.push_back({QStringLiteral("plan_new_mix"), tr("new mix, of the pot"), share(new_mix_share(outcome->plan, *worked)), {}, explained("fill")});
    group.figures.push_back({QStringLiteral("plan_shoulder"), tr("shoulder over the soil"), to_local(depth_text(worked->shoulder, units_)), {}, explained("shoulder")});
  }
  figures_->show_group(group);
  if (outcome->coarse) return;
  stop_table_->setVisible(!answer.stop_table.empty());
  stop_table_->setRowCount(static_cast<int>(answer.stop_table.size()));
  const int line = std::max(26, fontMetrics().height() + 8);
  stop_table_->verticalHeader()->setDefaultSectionSize(line);
  for (int row = 0; row < stop_table_->rowCount(); ++row) {
    const StopRow& stop = answer.stop_table[static_cast<std::size_t>(row)];
    const QStringList cells{plan_length_text(stop.stops_at, units_), stop.fits ? plan_length_text(stop.below, units_) : tr("not in one go"), to_local(depth_text(stop.trunk_base, units_)),
                            share(stop.untouched_share), to_local(volume_text(in_ml(stop.fill) / 1000, units_))};
    for (int column = 0; column < cells.size(); ++column) stop_table_->setItem(row, column, new QTableWidgetItem(cells[column]));
  }
  stop_table_->resizeColumnsToContents();
  stop_table_->setFixedHeight((stop_table_->rowCount() + 1) * line + 8);
}

}  // namespace gritwright::desktop
