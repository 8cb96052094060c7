#include "grain_form.hpp"

#include <QComboBox>
#include <QLabel>
#include <QVBoxLayout>

#include "field_form.hpp"
#include "models/material_words.hpp"
#include "sheet_editor.hpp"
#include "text.hpp"

namespace gritwright::desktop {

GrainForm::GrainForm(Bench& bench, QWidget* parent)
    : QWidget(parent),
      bench_(bench),
      form_(new FieldForm(bench, [&bench] { return current_faults(bench); }, this)),
      materials_(new QComboBox(this)),
      description_(new QLabel(this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 10, 8);
  layout->setSpacing(8);
  materials_->setObjectName(QStringLiteral("material"));
  materials_->addItem(tr("none: own figures only"), QString());
  for (const Material& material : bench_.catalogue().materials()) materials_->addItem(material_words(material.name), to_qt(material.name));
  materials_->setAccessibleName(tr("Material"));
  materials_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  materials_->setMinimumContentsLength(14);
  form_->add(tr("&Material"), materials_);
  connect(materials_, &QComboBox::activated, this, [this](int index) {
    const QString name = materials_->itemData(index).toString();
    bench_.edit(tr("material"), {}, [&](BenchState& state) {
      if (ComponentSheet* component = current_component(bench_, state)) component->material = name;
    });
  });
  const auto text = [this](QString GrainText::*member) {
    return [this, member](BenchState& state) -> QString* {
      ComponentSheet* component = current_component(bench_, state);
      return component != nullptr ? &(component->grain.*member) : nullptr;
    };
  };
  const auto typical_text = [this](double value, Kind kind) { return tr("%1 (typical)").arg(shown_text(number_text(value, 4), kind, bench_.units())); };
  const auto typical = [this, typical_text](const std::optional<CatalogueFigure> Material::*figure, Kind kind) {
    return [this, typical_text, figure, kind]() -> QString {
      const Material* chosen = material();
      if (chosen == nullptr || !(chosen->*figure)) return tr("not known");
      constexpr double percent = 100;
      return typical_text((chosen->*figure)->value * (kind == Kind::percent ? percent : 1), kind);
    };
  };
  form_->add({QStringLiteral("bulk_density"), tr("&Litre weight, dry"), Kind::density, [] { return tr("litre weight"); }, text(&GrainText::bulk_density),
              {"/bulk_density_g_l"}, tr("of one litre, loosely poured"), {},
              [this, typical_text] {
                const Material* chosen = material();
                return chosen == nullptr ? tr("weigh a litre") : typical_text(chosen->bulk_density_g_l.value, Kind::density);
              },
              {}});
  form_->add({QStringLiteral("particle_density"), tr("Gr&ain density"), Kind::density, [] { return tr("grain density"); }, text(&GrainText::particle_density),
              {"/particle_density_g_l"}, tr("dry mass of the grain with its inner pores"), {}, typical(&Material::particle_density_g_l, Kind::density), {}});
  form_->add({QStringLiteral("skeletal_density"), tr("Soli&d density"), Kind::density, [] { return tr("solid density"); }, text(&GrainText::skeletal_density),
              {"/skeletal_density_g_l"}, tr("dry mass of the solid without pores"), {}, typical(&Material::skeletal_density_g_l, Kind::density), {}});
  form_->add({QStringLiteral("water_absorption"), tr("&Water after 24 h"), Kind::percent, [] { return tr("water absorption"); }, text(&GrainText::water_absorption),
              {"/water_absorption"}, tr("water in the soaked, surface-dry grain, of its dry mass"), {}, typical(&Material::water_absorption, Kind::percent), {}});
  layout->addWidget(form_);
  auto* heading = new QLabel(tr("The sample that was sieved"), this);
  heading->setProperty("role", "heading");
  layout->addWidget(heading);
  auto* sample = new FieldForm(bench, [&bench] { return current_faults(bench); }, this);
  const auto of_sheet = [this](QString SieveSheet::*member) {
    return [this, member](BenchState& state) -> QString* {
      ComponentSheet* component = current_component(bench_, state);
      return component != nullptr ? &(component->sheet.*member) : nullptr;
    };
  };
  sample->add({QStringLiteral("sieve_frame"), tr("Sieve, across"), Kind::frame, [] { return tr("width of the sieves"); }, of_sheet(&SieveSheet::sieve_diameter),
              {"/sieve_diameter_mm"}, tr("inside its frame; shows an overloaded sieve"), {}, {}, {}});
  sample->add({QStringLiteral("sample_moisture"), tr("Water in the sample"), Kind::percent, [] { return tr("moisture of the sample"); }, of_sheet(&SieveSheet::moisture),
              {"/moisture_percent"}, tr("as sieved, of its dry mass; empty if dry"), {}, {}, {}});
  sample->add({QStringLiteral("washed_dry_mass"), tr("Washed, dry"), Kind::mass, [] { return tr("washed mass of the sample"); }, of_sheet(&SieveSheet::washed_dry_mass),
              {"/washed_dry_mass_g"}, tr("of the sample, if its dust was washed out"), {}, {}, {}});
  layout->addWidget(sample);
  description_->setObjectName(QStringLiteral("material_description"));
  description_->setWordWrap(true);
  description_->setProperty("role", "muted");
  layout->addWidget(description_);
  layout->addStretch(1);
  connect(&bench_, &Bench::changed, this, &GrainForm::refresh);
  connect(&bench_, &Bench::current_component_changed, this, &GrainForm::refresh);
  refresh();
}

const Material* GrainForm::material() const {
  const auto index = static_cast<std::size_t>(bench_.current_component());
  if (index >= bench_.state().components.size()) return nullptr;
  return bench_.catalogue().find(bench_.state().components[index].material.toStdString());
}

void GrainForm::refresh() {
  const Material* chosen = material();
  const int at = chosen != nullptr ? materials_->findData(to_qt(chosen->name)) : 0;
  materials_->setCurrentIndex(std::max(0, at));
  description_->setText(chosen != nullptr ? tr("%1 Typical figures stand in for what is not measured.").arg(material_words(chosen->description))
                                          : tr("Without a material the litre weight must be weighed before the component can go into the mix."));
}

}  // namespace gritwright::desktop
