#include "pot_form.hpp"

#include <QComboBox>
#include <QCoreApplication>
#include <QVBoxLayout>
#include <algorithm>

#include "field_form.hpp"
#include "text.hpp"

namespace gritwright::desktop {

namespace {

TextPlace pot_text(QString PotSheet::*member) {
  return [member](BenchState& state) -> QString* { return &(state.pot.*member); };
}

}  // namespace

QString as_of_kept_pots(const char* text) { return QCoreApplication::translate("gritwright::desktop::PotsTab", text); }

std::vector<std::pair<Shape, QString>> pot_shapes() {
  return {{Shape::rectangular, PotForm::tr("rectangle")}, {Shape::oval, PotForm::tr("oval")}, {Shape::round, PotForm::tr("round")}, {Shape::hexagonal, PotForm::tr("hexagon")},
          {Shape::octagonal, PotForm::tr("octagon")}, {Shape::drum, PotForm::tr("drum, lip turned in")}, {Shape::superellipse, PotForm::tr("soft rectangle")},
          {Shape::bowl, PotForm::tr("bowl")}, {Shape::profile, as_of_kept_pots("table of areas")}};
}

PotForm::PotForm(Bench& bench, QWidget* parent)
    : QWidget(parent),
      bench_(bench),
      form_(new FieldForm(bench, [&bench] { return &bench.evaluation().faults; }, this)),
      kept_(new QComboBox(this)),
      shapes_(new QComboBox(this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 10, 8);
  kept_->setObjectName(QStringLiteral("pot_kept"));
  kept_->setAccessibleName(tr("One of your pots"));
  kept_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  kept_->setMinimumContentsLength(10);
  form_->add(tr("&Your pots"), kept_);
  connect(kept_, &QComboBox::activated, this, [this](int index) {
    if (index > 0) emit pot_wanted(kept_->itemData(index).toString());
    refresh();
  });
  set_pots({});
  shapes_->setObjectName(QStringLiteral("pot_shape"));
  shapes_->setAccessibleName(tr("Shape"));
  for (const auto& [shape, name] : pot_shapes()) shapes_->addItem(name, static_cast<int>(shape));
  form_->add(tr("Sha&pe"), shapes_);
  connect(shapes_, &QComboBox::activated, this, [this](int index) {
    bench_.edit(tr("shape of the pot"), {}, [&](BenchState& state) {
      state.pot.shape = static_cast<Shape>(shapes_->itemData(index).toInt());
      // Four is a soft rectangle; a drum or superellipse left without its own figure would only show a fault.
      if (state.pot.shape == Shape::superellipse && state.pot.exponent.isEmpty()) state.pot.exponent = QStringLiteral("4");
    });
  });
  add_lengths();
  add_fill();
  layout->addWidget(form_);
  layout->addStretch(1);
  connect(&bench_, &Bench::changed, this, &PotForm::refresh);
  refresh();
}

void PotForm::add_lengths() {
  const auto shape = [this] { return bench_.state().pot.shape; };
  const auto with_width = [shape] { return has_width(shape()); };
  const auto with_lengths = [shape] { return shape() != Shape::profile; };
  const auto with_base = [shape] { return shape() != Shape::bowl && shape() != Shape::profile; };
  const auto named = [shape](const QString& length, const QString& diameter, const QString& flats) {
    return [=] {
      if (has_width(shape())) return length;
      return shape() == Shape::hexagonal || shape() == Shape::octagonal ? flats : diameter;
    };
  };
  const auto fields = [](const char* place) {
    const std::string start = place;
    return std::vector<std::string>{start, start + "/length_cm", start + "/diameter_cm", start + "/across_flats_cm"};
  };
  form_->add({QStringLiteral("rim_length"), tr("Rim, length"), Kind::length, [] { return tr("rim of the pot"); }, pot_text(&PotSheet::rim_length), fields("/rim"),
              tr("inside, at the rim"), with_lengths, {}, named(tr("Rim, length"), tr("Rim, diameter"), tr("Rim, across flats"))});
  form_->add({QStringLiteral("rim_width"), tr("Rim, &width"), Kind::length, [] { return tr("rim width of the pot"); }, pot_text(&PotSheet::rim_width), {"/rim/width_cm"},
              tr("inside, at the rim"), with_width, {}, {}});
  form_->add({QStringLiteral("middle"), tr("&Middle, diameter"), Kind::length, [] { return tr("middle of the pot"); }, pot_text(&PotSheet::middle),
              {"/middle", "/middle/diameter_cm"}, tr("inside, at half the depth"), [shape] { return shape() == Shape::drum; }, {}, {}});
  form_->add({QStringLiteral("base_length"), tr("Floor, length"), Kind::length, [] { return tr("floor of the pot"); }, pot_text(&PotSheet::base_length), fields("/base"),
              tr("as the rim: straight walls"), with_base, {}, named(tr("Floor, length"), tr("Floor, diameter"), tr("Floor, across flats"))});
  form_->add({QStringLiteral("base_width"), tr("Floor, width"), Kind::length, [] { return tr("floor width of the pot"); }, pot_text(&PotSheet::base_width), {"/base/width_cm"},
              tr("as the rim: straight walls"), [with_width, with_base] { return with_width() && with_base(); }, {}, {}});
  form_->add({QStringLiteral("exponent"), tr("Corner e&xponent"), Kind::number, [] { return tr("corner exponent of the pot"); }, pot_text(&PotSheet::exponent), {"/exponent"},
              tr("2 an ellipse, 4 soft corners, 6 nearly square"), [shape] { return shape() == Shape::superellipse; }, {}, {}});
  form_->add({QStringLiteral("depth"), tr("Dep&th inside"), Kind::length, [] { return tr("depth of the pot"); }, pot_text(&PotSheet::depth), {"/depth_cm"},
              tr("floor to rim"), with_lengths, {}, {}});
  form_->add({QStringLiteral("pot_areas"), as_of_kept_pots("Heights and areas"), Kind::words, [] { return as_of_kept_pots("table of areas"); }, pot_text(&PotSheet::areas), {"/areas"},
              as_of_kept_pots("cm and cm2 from the floor: 0 450; 4 520; 8 600"), [shape] { return shape() == Shape::profile; }, {}, {}});
}

void PotForm::add_fill() {
  form_->add({QStringLiteral("freeboard"), tr("F&ill line below rim"), Kind::length, [] { return tr("fill line of the pot"); }, pot_text(&PotSheet::freeboard), {"/freeboard_cm"},
              tr("common practice: 0.3 to 1 cm"), {}, {}, {}});
  form_->add({QStringLiteral("water_fill"), tr("W&ater fill"), Kind::pot_volume, [] { return tr("water fill of the pot"); }, pot_text(&PotSheet::water_fill), {"/water_fill_ml"},
              tr("measured; overrides the lengths"), {}, {}, {}});
  form_->add({QStringLiteral("mound"), tr("Mou&nd above it"), Kind::length, [] { return tr("mound of the pot"); }, pot_text(&PotSheet::mound_rise), {"/mound/rise_cm"},
              tr("rise in the middle; none if empty"), {}, {}, {}});
  form_->add({QStringLiteral("saucer"), tr("Sa&ucer water"), Kind::length, [] { return tr("saucer of the pot"); }, pot_text(&PotSheet::saucer), {"/saucer_cm"},
              tr("standing water above the floor"), {}, {}, {}});
  form_->add({QStringLiteral("wick"), tr("Wick or ground"), Kind::length, [] { return tr("wick of the pot"); }, pot_text(&PotSheet::wick), {"/wick_cm"},
              tr("length below the floor"), {}, {}, {}});
  form_->add({QStringLiteral("tilt"), tr("Tilt, deg&rees"), Kind::number, [] { return tr("tilt of the pot"); }, pot_text(&PotSheet::tilt), {"/tilt_deg"},
              tr("about the length; level if empty"), {}, {}, {}});
  form_->add({QStringLiteral("settling"), tr("Sett&ling"), Kind::percent, [] { return tr("settling"); },
              [](BenchState& state) -> QString* { return &state.settling; }, {"/settling"}, tr("lost volume: 0 poured, about 8 worked in; empty: by jug tests of the bags, else as usual"), {}, [this] { return settling_hint(); }, {}});
  form_->add({QStringLiteral("spill"), tr("&Spill"), Kind::percent, [] { return tr("spill"); }, [](BenchState& state) -> QString* { return &state.spill; }, {"/spill"},
              tr("mix that misses the pot, 5 to 10"), {}, {}, {}});
}

QString PotForm::settling_hint() const {
  const BenchEvaluation& evaluation = bench_.evaluation();
  const QString percent = number_text(100 * evaluation.settling.value(), 2);
  if (evaluation.settled_by == SettledBy::jug) return tr("empty: %1, by a jug of this mix").arg(percent);
  return evaluation.settled_by == SettledBy::grains ? tr("empty: %1, by your jug tests").arg(percent) : tr("empty: %1, worked in; 0 if poured").arg(percent);
}

void PotForm::set_pots(std::vector<KeptPot> pots) {
  pots_ = std::move(pots);
  kept_->clear();
  kept_->addItem(pots_.empty() ? tr("none is kept yet") : tr("as typed"), QString());
  for (const KeptPot& pot : pots_) kept_->addItem(QStringLiteral("%1 %2").arg(pot.id, pot.name), pot.id);
  kept_->setEnabled(!pots_.empty());
  refresh();
}

void PotForm::refresh() {
  // Whose lengths are typed is told by the lengths, so that a changed one no longer passes for the pot.
  const auto same = std::ranges::find(pots_, bench_.state().pot, &KeptPot::sheet);
  kept_->setCurrentIndex(same == pots_.end() ? 0 : 1 + static_cast<int>(same - pots_.begin()));
  shapes_->setCurrentIndex(shapes_->findData(static_cast<int>(bench_.state().pot.shape)));
}

}  // namespace gritwright::desktop
