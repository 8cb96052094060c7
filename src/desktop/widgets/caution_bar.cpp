#include "caution_bar.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QSettings>
#include <QToolButton>

namespace gritwright::desktop {

namespace {

QString setting_of(const QString& topic) { return QStringLiteral("cautions_put_away/") + topic; }

}  // namespace

CautionBar::CautionBar(QString topic, const QString& title, const QString& text, QWidget* parent) : QFrame(parent), topic_(std::move(topic)) {
  setObjectName(QStringLiteral("caution"));
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(10, 6, 6, 6);
  auto* words = new QLabel(QStringLiteral("<b>%1</b> %2").arg(title.toHtmlEscaped(), text.toHtmlEscaped()), this);
  words->setTextFormat(Qt::RichText);
  words->setObjectName(QStringLiteral("caution_text"));
  words->setWordWrap(true);
  layout->addWidget(words, 1);
  auto* put_away = new QToolButton(this);
  put_away->setObjectName(QStringLiteral("put_away_") + topic_);
  put_away->setText(tr("Got it"));
  put_away->setAccessibleName(tr("Put away the caution: %1").arg(title));
  put_away->setMinimumHeight(26);
  layout->addWidget(put_away, 0, Qt::AlignTop);
  connect(put_away, &QToolButton::clicked, this, [this] {
    QSettings().setValue(setting_of(topic_), true);
    hide();
  });
  setVisible(!QSettings().value(setting_of(topic_)).toBool());
}

void CautionBar::restore() {
  QSettings().remove(setting_of(topic_));
  show();
}

}  // namespace gritwright::desktop
