#include "measure_page.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QVBoxLayout>
#include <algorithm>

#include "models/material_words.hpp"
#include "text.hpp"
#include "theme_style.hpp"
#include "widgets/caution_bar.hpp"
#include "widgets/column_scroll.hpp"
#include "widgets/figure_panel.hpp"
#include "widgets/folding_sides.hpp"
#include "widgets/form_row.hpp"
#include "widgets/protocol_drawing.hpp"
#include "widgets/record_form.hpp"

namespace gritwright::desktop {

namespace {

QLabel* measure_words(QWidget* parent, const char* object_name, const char* role = nullptr) {
  auto* label = new QLabel(parent);
  label->setObjectName(QLatin1String(object_name));
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  if (role != nullptr) label->setProperty("role", role);
  return label;
}

QComboBox* measure_chooser(QWidget* parent, const char* object_name, const QString& name) {
  auto* box = new QComboBox(parent);
  box->setObjectName(QLatin1String(object_name));
  box->setAccessibleName(name);
  box->setMinimumHeight(28);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(18);
  return box;
}

}  // namespace

MeasurePage::MeasurePage(RecordBook& book, const Catalogue& catalogue, QWidget* parent) : QWidget(parent), book_(book), catalogue_(catalogue) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 8, 8, 8);
  auto* sides = new FoldingSides(QStringLiteral("measure_splitter"), this);
  sides->add(asked_side());
  sides->add(answer_side());
  sides->set_sizes({700, 560});
  layout->addWidget(sides);
  connect(&book_, &RecordBook::changed, this, [this] {
    kept_text_.clear();  // it may have been undone
    if (!isVisible()) return;
    fill_subjects(sheet_.subject ? to_qt(sheet_.subject->id) : QString());
    fill_pots();
    build_form();
  });
}

QWidget* MeasurePage::asked_side() {
  auto* card = new QFrame(this);
  card->setObjectName(QStringLiteral("card"));
  auto* layout = new QVBoxLayout(card);
  layout->setContentsMargins(10, 8, 10, 8);
  layout->setSpacing(8);
  auto* choosers = new QWidget(card);
  auto* grid = form_grid(choosers);
  protocol_ = measure_chooser(choosers, "measure_protocol", tr("Measurement"));
  for (const Protocol protocol : protocols) protocol_->addItem(words_of(protocol).name, static_cast<int>(protocol));
  add_plain_row(*grid, *protocol_, tr("&Measure"));
  subject_ = measure_chooser(choosers, "measure_subject", tr("What is measured"));
  subject_label_ = add_plain_row(*grid, *subject_, {});
  pot_ = measure_chooser(choosers, "measure_pot", tr("Pot of the test"));
  pot_label_ = add_plain_row(*grid, *pot_, tr("In the &pot"));
  layout->addWidget(choosers);
  purpose_ = measure_words(card, "measure_purpose");
  layout->addWidget(purpose_);
  layout->addWidget(new CautionBar(QStringLiteral("measuring"), tr("Dust, heat and weight:"),
                                   tr("dry dusty grain outdoors with a mask; let hot dishes cool; lift wet pots with both hands. General information; safety sheets, local codes and "
                                      "qualified advice prevail."),
                                   card));
  form_place_ = new QVBoxLayout;
  layout->addLayout(form_place_);
  drawing_ = new ProtocolDrawing(card);
  layout->addWidget(drawing_);
  steps_ = measure_words(card, "measure_steps");
  layout->addWidget(steps_);
  layout->addStretch(1);
  connect(protocol_, &QComboBox::activated, this, [this] { show_protocol(static_cast<Protocol>(protocol_->currentData().toInt()), subject_->currentData().toString()); });
  connect(subject_, &QComboBox::activated, this, &MeasurePage::subject_chosen);
  connect(pot_, &QComboBox::activated, this, [this] {
    sheet_.container = pot_->currentData().toString();
    build_form();
  });
  return new ColumnScroll(card, this);
}

QWidget* MeasurePage::answer_side() {
  auto* side = new QWidget(this);
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  figures_ = new FigurePanel(side);
  layout->addWidget(figures_);
  state_ = measure_words(side, "measure_state");
  layout->addWidget(state_);
  questions_ = measure_words(side, "measure_questions");
  layout->addWidget(questions_);
  keep_ = new QPushButton(tr("&Keep what was measured"), side);
  keep_->setObjectName(QStringLiteral("measure_keep"));
  keep_->setAccessibleName(tr("Keep what was measured"));
  keep_->setMinimumHeight(30);
  connect(keep_, &QPushButton::clicked, this, &MeasurePage::keep);
  layout->addWidget(keep_, 0, Qt::AlignLeft);
  layout->addStretch(1);
  return new ColumnScroll(side, this);
}

// Grain soaks for a day and dries for another: what is typed outlives the window.
QString MeasurePage::draft_key(const QString& field) const {
  const QString subject = sheet_.subject ? to_qt(ref_text(*sheet_.subject)).replace(u'/', u'_') : QStringLiteral("none");
  return QStringLiteral("measuring/%1/%2/%3/%4").arg(book_.settings_key(), QLatin1String(key_of(sheet_.protocol)), subject, field);
}

void MeasurePage::show_protocol(Protocol protocol, const QString& subject) {
  kept_text_.clear();
  sheet_.protocol = protocol;
  protocol_->setCurrentIndex(protocol_->findData(static_cast<int>(protocol)));
  const ProtocolWords text = words_of(protocol);
  purpose_->setText(text.purpose);
  QStringList numbered;
  for (const QString& step : text.steps) numbered << QStringLiteral("%1. %2").arg(numbered.size() + 1).arg(step);
  steps_->setText(numbered.join(u'\n'));
  drawing_->show_protocol(protocol);
  subject_label_->setText(takes_pot(protocol) ? tr("Mi&x") : protocol == Protocol::jug ? tr("&Bag or mix") : tr("&Bag"));
  fill_subjects(subject);
  fill_pots();
  build_form();
}

void MeasurePage::fill_subjects(const QString& wanted) {
  subject_->clear();
  for (const RecordLine& line : subjects_of(book_.workbook(), sheet_.protocol)) {
    subject_->addItem(choice_words(line), to_qt(line.ref.id));
    subject_->setItemData(subject_->count() - 1, static_cast<int>(line.ref.kind), Qt::UserRole + 1);
  }
  const int at = subject_->findData(wanted);
  subject_->setCurrentIndex(at >= 0 ? at : subject_->count() > 0 ? 0 : -1);
  sheet_.subject.reset();
  if (subject_->currentIndex() >= 0)
    sheet_.subject = RecordRef{static_cast<RecordKind>(subject_->currentData(Qt::UserRole + 1).toInt()), subject_->currentData().toString().toStdString()};
}

void MeasurePage::fill_pots() {
  const bool wanted = takes_pot(sheet_.protocol);
  pot_->setVisible(wanted);
  pot_label_->setVisible(wanted);
  pot_->clear();
  pot_->addItem(tr("straight walls"), QString());
  if (wanted) {
    for (const RecordLine& line : book_.workbook().list(RecordKind::container)) pot_->addItem(choice_words(line), to_qt(line.ref.id));
  }
  pot_->setCurrentIndex(std::max(0, pot_->findData(sheet_.container)));
  sheet_.container = pot_->currentData().toString();
}

void MeasurePage::subject_chosen() {
  kept_text_.clear();
  fill_subjects(subject_->currentData().toString());
  build_form();
}

void MeasurePage::build_form() {
  const std::vector<ProtocolField> fields = fields_of(book_.workbook(), sheet_);
  QString wanted = draft_key(sheet_.container);
  for (const ProtocolField& field : fields) wanted += field.key + field.label;
  if (wanted != built_for_) {
    built_for_ = wanted;
    // Not at once: the change may come out of one of its fields.
    if (form_ != nullptr) {
      form_->hide();
      form_->setObjectName(QString());
      for (QObject* part : form_->findChildren<QObject*>()) part->setObjectName(QString());
      form_->deleteLater();
    }
    form_ = new RecordForm(this);
    sheet_.texts.clear();
    for (const ProtocolField& field : fields) {
      sheet_.texts[field.key] = QSettings().value(draft_key(field.key)).toString();
      const QString key = field.key;
      form_->add({QStringLiteral("measure_") + key, field.label, field.kind, field.hint, [this, key] { return sheet_.texts[key]; },
                  [this, key](const QString& text) -> Problems {
                    sheet_.texts[key] = text;
                    QSettings().setValue(draft_key(key), text);
                    refresh();
                    return {};
                  }});
    }
    form_->set_units(units_);
    form_place_->addWidget(form_);
    form_->show();
  }
  refresh();
}

void MeasurePage::refresh() {
  ProtocolAnswer answer;
  try {
    answer = answer_of(book_.workbook(), catalogue_, sheet_, units_);
  } catch (const WorkbookTrouble& trouble) {
    answer.faults << sentence_text(trouble.problem());
  }
  figures_->show_group(answer.figures);
  figures_->setVisible(!answer.figures.figures.empty());
  const bool faulty = !answer.faults.isEmpty();
  const bool can_keep = !faulty && answer.waiting.isEmpty() && answer.change;
  const bool begun = std::ranges::any_of(sheet_.texts, [](const auto& typed) { return !typed.second.isEmpty(); });
  if (begun) kept_text_.clear();
  state_->setText(faulty ? answer.faults.join(u'\n') : answer.waiting.isEmpty() ? tr("Complete: keep it, and the estimates use it from now on.") : kept_text_.isEmpty() ? answer.waiting : kept_text_);
  give_role(*state_, faulty ? QStringLiteral("fault") : QString());
  answer.questions.removeDuplicates();
  questions_->setText(answer.questions.isEmpty() ? QString() : tr("Is that right?") + QStringLiteral("\n\u2022 ") + answer.questions.join(QStringLiteral("\n\u2022 ")));
  questions_->setVisible(!answer.questions.isEmpty());
  keep_->setEnabled(can_keep);
}

bool MeasurePage::keep() {
  ProtocolAnswer answer = answer_of(book_.workbook(), catalogue_, sheet_, units_);
  if (!answer.faults.isEmpty() || !answer.waiting.isEmpty() || !answer.change) {
    emit book_.told(answer.faults.isEmpty() ? answer.waiting : answer.faults.front());
    return false;
  }
  const QString told = with_units_kept(to_qt(answer.change->log->text));
  const ProtocolSheet was = sheet_;
  if (!book_.apply(std::move(*answer.change))) return false;
  for (const auto& [key, text] : was.texts) QSettings().remove(draft_key(key));
  built_for_.clear();
  // Beside the empty form, too: what is said in passing is gone with the next key.
  kept_text_ = tr("Kept: %1").arg(told);
  build_form();
  // The next measurement may begin at once.
  if (auto* first = form_->findChild<QLineEdit*>()) first->setFocus();
  emit book_.told(kept_text_);
  emit kept(to_qt(was.subject->id));
  return true;
}

void MeasurePage::set_units(UnitSystem units) {
  units_ = units;
  if (form_ != nullptr) form_->set_units(units);
  refresh();
}

void MeasurePage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  show_protocol(sheet_.protocol, sheet_.subject ? to_qt(sheet_.subject->id) : QString());
}

}  // namespace gritwright::desktop
