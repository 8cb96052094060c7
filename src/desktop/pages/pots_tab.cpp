#include "pots_tab.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "charts/picture_tabs.hpp"
#include "charts/pot_drawing.hpp"
#include "gritwright/formats/number.hpp"
#include "gritwright/formats/typed_quantity.hpp"
#include "gritwright/models/pot_notes.hpp"
#include "gritwright/models/pot_ranges.hpp"
#include "models/bench_ranges.hpp"
#include "models/picture_figures.hpp"
#include "models/pot_library.hpp"
#include "models/typed_areas.hpp"
#include "text.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/figure_panel.hpp"
#include "widgets/folding_sides.hpp"
#include "widgets/gone_notice.hpp"
#include "widgets/new_pot_form.hpp"
#include "widgets/pot_form.hpp"
#include "widgets/record_form.hpp"
#include "widgets/record_list_side.hpp"

namespace gritwright::desktop {

namespace {

Result<double> pot_number(const std::string& text) { return parse_number(text, DecimalMark::point_or_comma); }
Result<Length> pot_length(const std::string& text) { return parse_length(text, LengthUnit::centimetre); }

bool is_table(Shape shape) { return shape == Shape::profile; }
bool has_floor_edge(Shape shape) { return shape != Shape::bowl && shape != Shape::profile; }

QString cm_text(Length length) { return number_text(in_cm(length), 6); }
QString cm_or_empty(Length length) { return length.value() == 0 ? QString() : cm_text(length); }

/// Round shapes carry their diameter in both.
void set_side(Section& section, Shape shape, Length length) {
  section.length = length;
  if (!has_width(shape)) section.width = length;
}

void take_shape(Container& pot, Shape shape) {
  if (is_table(pot.shape) && !is_table(shape) && in_cm(pot.rim.length) <= 0) {
    // A pot that was measured as a table has no lengths yet: those of a rim as wide.
    const double rim_cm2 = in_cm2(pot.areas.back().area);
    const Length side = length_cm(std::sqrt(has_width(shape) ? rim_cm2 : rim_cm2 * 4 / std::numbers::pi));
    pot.rim = {side, side};
  }
  if (shape == Shape::profile) {
    // Starts from what the pot was, so that the picture stays where it is.
    const PotGeometry geometry(pot);
    pot.areas.clear();
    for (const double share : {0.0, 0.5, 1.0}) pot.areas.push_back({pot.depth * share, geometry.area_at(pot.depth * share)});
    if (in_cm2(pot.areas.front().area) <= 0) pot.areas.front().area = area_cm2(0);
  }
  pot.shape = shape;
  if (!has_width(shape)) {
    pot.rim.width = pot.rim.length;
    if (pot.base) pot.base->width = pot.base->length;
  }
  if (!has_floor_edge(shape)) {
    pot.base.reset();
    pot.fillet_radius = Length{};
  }
  if (shape != Shape::rectangular) pot.corner_radius = Length{};
  if (shape != Shape::drum) pot.middle.reset();
  if (shape == Shape::superellipse && !pot.exponent) pot.exponent = 4;
  if (shape != Shape::superellipse) pot.exponent.reset();
  if (shape != Shape::profile) pot.areas.clear();
}

}  // namespace

PotsTab::PotsTab(RecordBook& book, QWidget* parent)
    : QWidget(parent),
      book_(book),
      editor_(book, [this] { return list_ == nullptr ? QString() : list_->current(); }, [](const QString& what, const QString& id) { return tr("%1 of pot %2").arg(what, id); }) {
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 8, 0, 0);
  auto* sides = new FoldingSides(QStringLiteral("pots_splitter"), this);
  const RecordListSide::Names names{QStringLiteral("pots"), tr("Pots"), tr("pot by number or name"),
                                    tr("No pots yet. Add one and measure its inside: length and width at the rim and at the floor, and the depth."), tr("free or taken"),
                                    tr("taken: %1").arg(QStringLiteral("TR-000"))};
  list_ = new RecordListSide(book, RecordKind::container, names, [this](const RecordLine& line) { return state_of(line.ref.id); }, sides);
  QPushButton* add = list_->add_button(QStringLiteral("pots_add"), tr("Add a &pot"));
  connect(add, &QPushButton::clicked, this, &PotsTab::add_pot);
  sides->add(list_);
  auto* column = new QWidget(sides);
  auto* forms = new QVBoxLayout(column);
  forms->setContentsMargins(0, 0, 0, 0);
  fresh_ = new NewPotForm(column);
  fresh_->hide();
  forms->addWidget(fresh_);
  forms->addWidget(form_side(), 1);
  forms->addStretch(0);
  sides->add(new ColumnScroll(column, sides));
  sides->add(answer_side(), 1);
  sides->set_sizes({350, 450, 460});
  layout->addWidget(sides);
  connect(list_, &RecordListSide::chosen, this, &PotsTab::chosen);
  list_->set_hold([this](const QString& id) { return gone_->hold({RecordKind::container, id.toStdString()}); });
  connect(gone_, &GoneNotice::let_go, list_, &RecordListSide::look_again);
  connect(fresh_, &NewPotForm::typed, this, &PotsTab::refresh);
  connect(fresh_, &NewPotForm::keep_wanted, this, &PotsTab::keep_fresh);
  connect(fresh_, &NewPotForm::left, this, [this] {
    fresh_->hide();
    refresh();
  });
  connect(&book_, &RecordBook::undone, form_, &RecordForm::forget_typing);
  connect(&book_, &RecordBook::changed, this, &PotsTab::refresh);
  form_->refresh(true);
  refresh();
}

QString PotsTab::state_of(const std::string& id) {
  if (const std::int64_t revision = book_.workbook().revision(); revision != used_revision_) {
    used_ = trees_by_pot(book_.workbook());
    used_revision_ = revision;
  }
  if (const auto found = used_.find(id); found != used_.end()) {
    QStringList trees;
    for (const std::string& tree : found->second) trees << to_qt(tree);
    return tr("taken: %1").arg(comma_list(trees));
  }
  const auto pot = book_.workbook().find(Id<RecordedContainer>{id});
  return pot && pot->record.given_away ? tr("given away") : tr("free");
}

QWidget* PotsTab::form_side() {
  auto* details = new QFrame(this);
  details_ = details;
  details->setObjectName(QStringLiteral("card"));
  auto* card = new QVBoxLayout(details);
  card->setContentsMargins(10, 8, 10, 8);
  title_ = new QLabel(details);
  title_->setObjectName(QStringLiteral("pots_title"));
  title_->setProperty("role", "heading");
  title_->setWordWrap(true);
  form_ = new RecordForm(details);
  form_->add({QStringLiteral("pots_name"), tr("&Name"), Kind::words, tr("as you call it"), editor_.shown([](const RecordedContainer& c) { return to_qt(c.container.name); }),
              editor_.words(tr("name"), [](RecordedContainer& c, std::string text) { c.container.name = std::move(text); })});
  shapes_ = new QComboBox(form_);
  shapes_->setObjectName(QStringLiteral("pots_shape"));
  shapes_->setAccessibleName(tr("Shape"));
  // In a longer language the names of the shapes would ask for more than 1024 pixels.
  shapes_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  shapes_->setMinimumContentsLength(14);
  for (const auto& [shape, name] : pot_shapes()) shapes_->addItem(name, static_cast<int>(shape));
  connect(shapes_, &QComboBox::activated, this, [this](int index) { set_shape(static_cast<Shape>(shapes_->itemData(index).toInt())); });
  form_->add(tr("&Shape"), shapes_);
  add_length_rows();
  add_fill_rows();
  add_paper_rows();
  given_away_ = new QCheckBox(tr("broken, sold or given away"), details);
  given_away_->setObjectName(QStringLiteral("pots_given_away"));
  given_away_->setAccessibleName(given_away_->text());
  given_away_->setMinimumHeight(26);
  connect(given_away_, &QCheckBox::clicked, this, [this](bool gone) { editor_.save(tr("whereabouts"), [&](RecordedContainer& c) { c.given_away = gone; }); });
  connect(form_, &RecordForm::typing_ended, this, [this] { book_.end_typing(); });
  gone_ = new GoneNotice(book_, QStringLiteral("pots"), {form_}, {}, details);
  card->addWidget(title_);
  card->addWidget(gone_);
  mind_ = new QLabel(details);
  mind_->setObjectName(QStringLiteral("pots_mind"));
  mind_->setWordWrap(true);
  mind_->hide();
  card->addWidget(mind_);
  card->addWidget(form_);
  card->addWidget(given_away_);
  card->addStretch(1);
  return details;
}

void PotsTab::add_length_rows() {
  const auto shape = [this] {
    if (drum_wanted_) return Shape::drum;
    const auto stored = editor_.record();
    return stored ? stored->record.container.shape : Shape::rectangular;
  };
  const auto named = [shape](const QString& length, const QString& diameter, const QString& flats) {
    return [=] {
      if (has_width(shape())) return length;
      return shape() == Shape::hexagonal || shape() == Shape::octagonal ? flats : diameter;
    };
  };
  form_->add({QStringLiteral("pots_rim_length"), tr("Rim, length"), Kind::length, tr("inside, at the rim"),
              editor_.shown([](const RecordedContainer& c) { return cm_text(c.container.rim.length); }),
              editor_.taken(tr("rim"), pot_length, [](RecordedContainer& c, std::optional<Length> value) { set_side(c.container.rim, c.container.shape, value.value_or(Length{})); }),
              [shape] { return !is_table(shape()); }, named(tr("Rim, length"), tr("Rim, diameter"), tr("Rim, across flats"))});
  form_->add({QStringLiteral("pots_rim_width"), tr("Rim, width"), Kind::length, tr("inside, at the rim"),
              editor_.shown([](const RecordedContainer& c) { return cm_text(c.container.rim.width); }),
              editor_.taken(tr("rim width"), pot_length, [](RecordedContainer& c, std::optional<Length> value) { c.container.rim.width = value.value_or(Length{}); }),
              [shape] { return has_width(shape()); }});
  form_->add({QStringLiteral("pots_middle"), tr("Middle, diameter"), Kind::length, tr("inside, at half the depth"),
              editor_.shown([](const RecordedContainer& c) { return c.container.middle ? cm_text(c.container.middle->length) : QString(); }),
              editor_.taken(tr("middle"), pot_length, [this](RecordedContainer& c, std::optional<Length> value) {
                if (drum_wanted_) take_shape(c.container, Shape::drum);
                c.container.middle = Section{value.value_or(Length{}), value.value_or(Length{})};
              }),
              [shape] { return shape() == Shape::drum; }});
  form_->add({QStringLiteral("pots_base_length"), tr("Floor, length"), Kind::length, tr("as the rim: straight walls"),
              editor_.shown([](const RecordedContainer& c) { return c.container.base ? cm_text(c.container.base->length) : QString(); }),
              editor_.taken(tr("floor"), pot_length, [](RecordedContainer& c, std::optional<Length> value) {
                if (!value) return c.container.base.reset();
                if (!c.container.base) c.container.base = c.container.rim;
                set_side(*c.container.base, c.container.shape, *value);
              }),
              [shape] { return has_floor_edge(shape()); }, named(tr("Floor, length"), tr("Floor, diameter"), tr("Floor, across flats"))});
  form_->add({QStringLiteral("pots_base_width"), tr("Floor, width"), Kind::length, tr("as the rim: straight walls"),
              editor_.shown([](const RecordedContainer& c) { return c.container.base ? cm_text(c.container.base->width) : QString(); }),
              editor_.taken(tr("floor width"), pot_length, [](RecordedContainer& c, std::optional<Length> value) {
                if (!value) return c.container.base.reset();
                if (!c.container.base) c.container.base = c.container.rim;
                c.container.base->width = *value;
              }),
              [shape] { return has_width(shape()) && has_floor_edge(shape()); }});
  form_->add({QStringLiteral("pots_exponent"), tr("Corner exponent"), Kind::number, tr("2 an ellipse, 4 soft corners, 6 nearly square"),
              editor_.shown([](const RecordedContainer& c) { return c.container.exponent ? number_text(*c.container.exponent, 4) : QString(); }),
              editor_.taken(tr("corner exponent"), pot_number, [](RecordedContainer& c, std::optional<double> value) { c.container.exponent = value; }),
              [shape] { return shape() == Shape::superellipse; }});
  form_->add({QStringLiteral("pots_areas"), tr("Heights and areas"), Kind::words, tr("cm and cm2 from the floor: 0 450; 4 520; 8 600"),
              editor_.shown([](const RecordedContainer& c) { return areas_text(c.container.areas); }),
              editor_.taken(tr("table of areas"), [](const std::string& text) { return parse_areas(to_qt(text)); }, [](RecordedContainer& c, std::optional<std::vector<AreaAtHeight>> areas) {
                c.container.areas = areas.value_or(std::vector<AreaAtHeight>{});
              }),
              [shape] { return is_table(shape()); }});
  form_->add({QStringLiteral("pots_depth"), tr("&Depth inside"), Kind::length, tr("floor to rim"),
              editor_.shown([](const RecordedContainer& c) { return cm_text(c.container.depth.quantity()); }),
              editor_.taken(tr("depth"), pot_length, [](RecordedContainer& c, std::optional<Length> value) { c.container.depth = Depth(value.value_or(Length{})); })});
  form_->add({QStringLiteral("pots_corner"), tr("Corner radius"), Kind::length, tr("sharp corners if empty"),
              editor_.shown([](const RecordedContainer& c) { return cm_or_empty(c.container.corner_radius); }),
              editor_.taken(tr("corner radius"), pot_length, [](RecordedContainer& c, std::optional<Length> value) { c.container.corner_radius = value.value_or(Length{}); }),
              [shape] { return shape() == Shape::rectangular; }});
  form_->add({QStringLiteral("pots_fillet"), tr("Rounding at the floor"), Kind::length, tr("radius between floor and wall"),
              editor_.shown([](const RecordedContainer& c) { return cm_or_empty(c.container.fillet_radius); }),
              editor_.taken(tr("rounding at the floor"), pot_length, [](RecordedContainer& c, std::optional<Length> value) { c.container.fillet_radius = value.value_or(Length{}); }),
              [shape] { return has_floor_edge(shape()); }});
}

void PotsTab::add_fill_rows() {
  form_->add({QStringLiteral("pots_freeboard"), tr("Fill line below rim"), Kind::length, to_local(tr("common practice: 0.3 to 1 cm").toStdString()),
              editor_.shown([](const RecordedContainer& c) { return cm_text(c.container.freeboard.quantity()); }),
              editor_.taken(tr("fill line"), pot_length, [](RecordedContainer& c, std::optional<Length> value) { c.container.freeboard = Depth(value.value_or(Length{})); })});
  form_->add({QStringLiteral("pots_water_fill"), tr("&Water fill"), Kind::pot_volume, tr("measured; overrides the lengths"),
              editor_.shown([](const RecordedContainer& c) { return c.container.water_fill ? number_text(in_ml(*c.container.water_fill), 6) : QString(); }),
              editor_.taken(tr("water fill"), [](const std::string& text) { return parse_volume(text, VolumeUnit::millilitre); },
                            [](RecordedContainer& c, std::optional<Volume> value) { c.container.water_fill = value ? std::optional(PotVolume(*value)) : std::nullopt; })});
  form_->add({QStringLiteral("pots_mound"), tr("Mound above it"), Kind::length, tr("rise in the middle; none if empty"),
              editor_.shown([](const RecordedContainer& c) { return c.container.mound ? cm_text(c.container.mound->rise.quantity()) : QString(); }),
              editor_.taken(tr("mound"), pot_length, [](RecordedContainer& c, std::optional<Length> value) {
                if (!value) return c.container.mound.reset();
                if (!c.container.mound) c.container.mound.emplace();
                c.container.mound->rise = Depth(*value);
              })});
  form_->add({QStringLiteral("pots_layer"), tr("Bottom layer"), Kind::length, tr("coarse grain on the floor; none if empty"),
              editor_.shown([](const RecordedContainer& c) { return c.container.bottom_layer ? cm_text(c.container.bottom_layer->thickness.quantity()) : QString(); }),
              editor_.taken(tr("bottom layer"), pot_length, [](RecordedContainer& c, std::optional<Length> value) {
                if (!value) return c.container.bottom_layer.reset();
                if (!c.container.bottom_layer) c.container.bottom_layer.emplace();
                c.container.bottom_layer->thickness = Depth(*value);
              })});
  form_->add({QStringLiteral("pots_dressing"), tr("Top dressing"), Kind::length, to_local(tr("usual 0.3 to 0.5; none if empty").toStdString()),
              editor_.shown([](const RecordedContainer& c) { return c.container.top_dressing ? cm_text(c.container.top_dressing->quantity()) : QString(); }),
              editor_.taken(tr("top dressing"), pot_length, [](RecordedContainer& c, std::optional<Length> value) { c.container.top_dressing = value ? std::optional(Depth(*value)) : std::nullopt; })});
}

void PotsTab::add_paper_rows() {
  form_->add({QStringLiteral("pots_mass"), tr("Own &mass"), Kind::mass, tr("empty and dry; for lifting"),
              editor_.shown([](const RecordedContainer& c) { return c.container.mass ? number_text(in_g(*c.container.mass), 6) : QString(); }),
              editor_.taken(tr("mass"), [](const std::string& text) { return parse_mass(text, MassUnit::gram); },
                            [](RecordedContainer& c, std::optional<WrittenMass> value) { c.container.mass = value ? std::optional(value->mass) : std::nullopt; })});
  form_->add({QStringLiteral("pots_holes"), tr("Drain holes"), Kind::number, tr("how many"),
              editor_.shown([](const RecordedContainer& c) { return c.drain_holes ? QString::number(*c.drain_holes) : QString(); }),
              editor_.taken(tr("drain holes"), pot_number, [](RecordedContainer& c, std::optional<double> value) {
                c.drain_holes = value ? std::optional(static_cast<int>(std::clamp(*value, -1e6, 1e6))) : std::nullopt;
              })});
  form_->add({QStringLiteral("pots_feet"), tr("Feet"), Kind::length, tr("height under the pot"),
              editor_.shown([](const RecordedContainer& c) { return c.feet ? cm_text(*c.feet) : QString(); }),
              editor_.taken(tr("feet"), pot_length, [](RecordedContainer& c, std::optional<Length> value) { c.feet = value; })});
  form_->add({QStringLiteral("pots_note"), tr("No&te"), Kind::words, tr("glaze, chips, where it stands"), editor_.shown([](const RecordedContainer& c) { return to_qt(c.note); }),
              editor_.words(tr("note"), [](RecordedContainer& c, std::string text) { c.note = std::move(text); })});
}

QWidget* PotsTab::answer_side() {
  auto* side = new QWidget(this);
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  auto* pictures = new PictureTabs(side);
  pictures->setObjectName(QStringLiteral("pots_pictures"));
  pictures->setAccessibleName(tr("Picture of the pot"));
  drawing_ = new PotDrawing(pictures);
  pictures->add({tr("The pot to scale"), drawing_, "pot_drawing_table", [this] { return drawing_->table(); }, [this] { return drawing_->data(); }, [this] { return explain_pot(drawing_->pot()); }});
  figures_ = new FigurePanel(side);
  layout->addWidget(pictures, 1);
  layout->addWidget(figures_);
  return new ColumnScroll(side, this);  // in large text the words of the figures take several lines
}

void PotsTab::set_shape(Shape shape) {
  const Problems problems = editor_.save(tr("shape"), [&](RecordedContainer& record) { take_shape(record.container, shape); });
  drum_wanted_ = std::ranges::find(problems, "container.middle-missing", &Problem::code) != problems.end();
  for (const Problem& problem : problems) emit book_.told(sentence_text(problem, units_));
  form_->refresh(true);
  refresh();
  if (drum_wanted_) form_->findChild<QLineEdit*>(QStringLiteral("pots_middle"))->setFocus();
}

void PotsTab::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void PotsTab::set_units(UnitSystem units) {
  units_ = units;
  form_->set_units(units);
  fresh_->set_units(units);
  refresh();
}

void PotsTab::add_pot() {
  fresh_->begin();
  refresh();
}

void PotsTab::keep_fresh() {
  if (!fresh_->pot()) return;
  RecordedContainer pot;
  pot.container = *fresh_->pot();
  const QString id = to_qt(book_.workbook().suggest_id(RecordKind::container));
  const QString told = QStringLiteral("%1 %2: %3").arg(id, to_qt(pot.container.name), tr("pot added"));
  if (book_.add(pot, tr("pot added"), id, event_about({RecordKind::container, id.toStdString()}, told, today())).isEmpty()) return;
  fresh_->forget();
  fresh_->hide();
  list_->show_record(id);
  refresh();
  form_->findChild<QLineEdit*>(has_floor_edge(pot.container.shape) ? QStringLiteral("pots_base_length") : QStringLiteral("pots_freeboard"))->setFocus();
}

void PotsTab::remove_pot() {
  const auto stored = editor_.record();
  if (!stored) return;
  if (book_.workbook().is_used(ref_to(stored->id))) {
    emit book_.told(tr("Pot %1 stays: a tree's history or a day names it. Mark it as given away instead.").arg(list_->current()));
    return;
  }
  form_->drop_typing();
  book_.remove(*stored, tr("pot %1 removed").arg(list_->current()));
}

void PotsTab::chosen() {
  gone_->leave();
  drum_wanted_ = false;
  fresh_->hide();
  book_.end_typing();
  form_->refresh(true);
  refresh();
}

void PotsTab::refresh() {
  if (!isVisible()) return;
  const RecordEditor<RecordedContainer>::ReadOnce once(editor_);
  const auto stored = editor_.record();
  const bool adding = !fresh_->isHidden();
  const bool shown = stored && !adding;
  if (stored && stored->record.container.shape == Shape::drum) drum_wanted_ = false;
  details_->setVisible(shown || (gone_->is_holding() && !adding));
  drawing_->show_pot(adding ? (fresh_->pot() ? &*fresh_->pot() : nullptr) : stored && !drum_wanted_ ? &stored->record.container : nullptr, units_);
  findChild<PictureTabs*>()->refresh_table();
  figures_->setVisible(shown && !drum_wanted_);
  if (!shown) return;
  gone_->is_back();
  form_->refresh(false);
  shapes_->setCurrentIndex(shapes_->findData(static_cast<int>(drum_wanted_ ? Shape::drum : stored->record.container.shape)));
  given_away_->setChecked(stored->record.given_away);
  title_->setText(tr("Pot %1: %2").arg(list_->current(), state_of(stored->id.text)));
  mind_->setVisible(false);
  if (drum_wanted_) return;
  const PotGeometry pot(stored->record.container);
  const Notes notes = notes_on_water_fill(pot);
  mind_->setVisible(!notes.empty());
  if (!notes.empty()) mind_->setText(QCoreApplication::translate("gritwright::desktop::MixPage", "Mind: %1").arg(sentence_text(notes.front(), units_)));
  const auto why = explain_holding(pot);
  const auto explained = [&](const char* key) {
    std::vector<Explanation> found;
    for (const Explanation& one : why) {
      if (one.figure == key) found.push_back(one);
    }
    return found;
  };
  const auto litres_of_ml = [&](double ml) { return volume_text(ml / 1000, units_); };
  const auto litres = [&](PotVolume volume) { return to_local(litres_of_ml(in_ml(volume))); };
  const PotRanges ranges = pot_ranges(pot, usual_pot_spread(), standing_sample);
  FigureGroup group{QStringLiteral("pot"), tr("What it holds"), {}, true};
  const auto add = [&](Figure figure, const std::optional<Range>& range) {
    put_range(figure, range, litres_of_ml);
    group.figures.push_back(std::move(figure));
  };
  add({QStringLiteral("pots_volume"), tr("to the fill line"), litres(pot.volume()), {}, explained("volume")}, ranges.volume_ml);
  add({QStringLiteral("pots_by_lengths"), tr("by its lengths alone"), litres(pot.volume_by_lengths()), {}, explained("by_lengths")}, ranges.by_lengths_ml);
  const bool poured = stored->record.container.water_fill.has_value();
  add({QStringLiteral("pots_difference"), tr("water fill against lengths"), poured ? to_local(percent_text(water_fill_difference(pot))) : QStringLiteral("\u2013"),
       poured ? QString() : tr("no water fill was measured"), explained("difference")},
      {});
  add({QStringLiteral("pots_main_mix"), tr("main mix, without layers"), litres(pot.main_mix_volume()), {}, explained("main_mix")}, ranges.main_mix_ml);
  figures_->show_group(group);
}

}  // namespace gritwright::desktop
