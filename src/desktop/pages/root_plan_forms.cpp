// The forms of the root-plan tab: root mass, stand, what may come off, the bench.
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <utility>

#include "charts/root_plan_view.hpp"
#include "gritwright/formats/number.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "gritwright/models/pot_geometry.hpp"
#include "models/pot_library.hpp"
#include "models/record_book.hpp"
#include "root_plan_parts.hpp"
#include "root_plan_tab.hpp"
#include "text.hpp"
#include "trees_tab.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/record_form.hpp"

namespace gritwright::desktop {

namespace {

Result<double> plan_number(const std::string& text) { return parse_number(text, DecimalMark::point_or_comma); }

QString order_words(const RootMassPlan& plan) {
  QStringList words;
  for (const Direction direction : plan.cut_order) words << direction_text(direction);
  return comma_list(words);
}

/// Words of the window's language, or those of a file.
Problems take_order(RootMassPlan& plan, const QString& text) {
  plan.cut_order.clear();
  QStringList known;
  for (const Direction direction : directions) known << direction_text(direction);
  for (const QString& word : text.split(QRegularExpression(QStringLiteral("[,;\u3001\uff0c\uff1b\\s]+")), Qt::SkipEmptyParts)) {
    const auto found = std::ranges::find_if(directions, [&](Direction direction) {
      return word.compare(direction_text(direction), Qt::CaseInsensitive) == 0 || word.toLower().toStdString() == direction_name(direction);
    });
    if (found == directions.end()) return Problems{Problem{"record.unknown-word", {}, {{"text", word.toStdString()}, {"expected", comma_list(known).toStdString()}}}};
    plan.cut_order.push_back(*found);
  }
  return {};
}

}  // namespace

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

RecordForm* RootPlanTab::new_form(QWidget* parent) {
  auto* form = new RecordForm(parent);
  // Clear of the line below the tabs.
  form->layout()->setContentsMargins(0, 8, 0, 0);
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

QWidget* RootPlanTab::form_side() {
  tabs_ = new QTabWidget(this);
  tabs_->setObjectName(QStringLiteral("plan_tabs"));
  tabs_->setAccessibleName(tr("Parts of the plan"));
  tabs_->setDocumentMode(true);
  tabs_->setUsesScrollButtons(true);
  const auto add = [this](QWidget* form, const QString& name) {
    form->setContentsMargins(0, 6, 6, 0);  // units would touch the scroll bar
    tabs_->addTab(new ColumnScroll(form, tabs_), name);
  };
  add(mass_form(), tr("Root mass"));
  add(pose_form(), tr("Stand"));
  add(permission_form(), tr("May come off"));
  add(bench_form(), tr("Bench"));
  return tabs_;
}

QWidget* RootPlanTab::mass_form() {
  auto* form = new_form(this);
  groups_ = plan_choice(form, "plan_group", tr("Species group"));
  for (const SpeciesGroup group : species_groups) groups_->addItem(group_text(group), static_cast<int>(group));
  connect(groups_, &QComboBox::activated, this, [this](int index) {
    save(tr("group"), [&](RootMassPlan& plan) { plan.group = static_cast<SpeciesGroup>(groups_->itemData(index).toInt()); });
  });
  form->add(tr("Species gro&up"), groups_);
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
                 return box == nullptr || (*box).*member == Length{} ? std::nullopt : std::optional((*box).*member);
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
  yes_or_no(bare_root_, "plan_bare_root", tr("All soil off on purpose: bare-rooted"), tr("Bare-root it"), tr("bare-rooting"), &RootMassPlan::bare_root);
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
  library_ = plan_choice(form, "plan_library", tr("Free pots of the record"));
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

}  // namespace gritwright::desktop
