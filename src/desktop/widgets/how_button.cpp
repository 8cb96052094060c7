#include "how_button.hpp"

#include <utility>

#include "explanation_popup.hpp"

namespace gritwright::desktop {

HowButton::HowButton(std::function<Figure()> asked, QWidget* parent) : QToolButton(parent) {
  setText(QStringLiteral("?"));
  setAutoRaise(true);
  setMinimumSize(26, 26);
  setToolTip(tr("How so? Formula, numbers and source"));
  connect(this, &QToolButton::clicked, this, [this, asked = std::move(asked)] {
    const Figure figure = asked();
    const QString title = figure.value.isEmpty() ? figure.label : tr("%1: %2").arg(figure.label, figure.value);
    (new ExplanationPopup(title, explanation_text(figure), this))->open_beside(this);
  });
}

void HowButton::set_figure(const Figure& figure) {
  setObjectName(QStringLiteral("how_") + figure.key);
  setAccessibleName(figure.value.isEmpty() ? tr("How so: %1").arg(figure.label) : tr("How so: %1, %2").arg(figure.label, figure.value));
  setEnabled(!figure.reason.isEmpty() || !figure.explanations.empty());
}

}  // namespace gritwright::desktop
