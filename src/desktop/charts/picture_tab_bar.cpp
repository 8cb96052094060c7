#include "picture_tab_bar.hpp"

#include <QStyleOptionTab>

#include "text.hpp"
#include "theme_style.hpp"

namespace gritwright::desktop {

namespace {

// As high as the button beside the bar, which would hang into the picture otherwise.
constexpr int least_tab_height = 32;

}  // namespace

int PictureTabBar::needed() const {
  int sum = 0;
  for (int tab = 0; tab < count(); ++tab)
    if (isTabVisible(tab)) sum += tabSizeHint(tab).width();
  return sum;
}

void PictureTabBar::fit_into(int beside_one_line, int beside_two_lines) {
  // The bar keeps some of it for itself.
  constexpr int of_the_bar = 6;
  const Fit before = fit_;
  for (const Fit fit : {Fit::one_line, Fit::close_line, Fit::two_lines, Fit::close_lines}) {
    fit_ = fit;
    setProperty(close_names, fit == Fit::close_line || fit == Fit::close_lines);
    const bool has_room = needed() <= (has_two_lines() ? beside_two_lines : beside_one_line) - of_the_bar;
    if (has_room) break;
    if (fit == Fit::close_lines && can_give_way_) fit_ = Fit::none;
  }
  if (fit_ != before && count() > 0) setTabText(0, tabText(0));  // has the bar measure its tabs anew
}

QSize PictureTabBar::tabSizeHint(int index) const {
  QSize hint = QTabBar::tabSizeHint(index).expandedTo({0, least_tab_height});
  if (gives_way()) return {0, hint.height()};
  if (!has_two_lines()) return hint;
  const QSize whole = fontMetrics().size(Qt::TextShowMnemonic, tabText(index));
  const QSize in_two = fontMetrics().size(Qt::TextShowMnemonic, in_two_lines(tabText(index)));
  hint += QSize(in_two.width() - whole.width(), fontMetrics().lineSpacing());
  return hint;
}

void PictureTabBar::paintEvent(QPaintEvent* event) {
  if (!gives_way()) QTabBar::paintEvent(event);
}

void PictureTabBar::initStyleOption(QStyleOptionTab* option, int index) const {
  QTabBar::initStyleOption(option, index);
  if (has_two_lines()) option->text = in_two_lines(tabText(index));
}

}  // namespace gritwright::desktop
