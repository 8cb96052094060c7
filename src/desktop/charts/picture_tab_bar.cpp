#include "picture_tab_bar.hpp"

#include <QStyleOptionTab>
#include <cstdlib>

namespace gritwright::desktop {

namespace {

// As high as the button beside the bar, which would hang into the picture otherwise.
constexpr int least_tab_height = 32;

}  // namespace

void PictureTabBar::fit_into(int width) {
  int one_line = 0;
  for (int tab = 0; tab < count(); ++tab) one_line += QTabBar::tabSizeHint(tab).width();
  const bool wanted = one_line > width;
  if (wanted == two_lines_ || count() == 0) return;
  two_lines_ = wanted;
  setTabText(0, tabText(0));  // has the bar measure its tabs anew
}

// At the space or hyphen nearest to the middle.
QString PictureTabBar::broken(int index) const {
  QString name = tabText(index);
  qsizetype at = -1;
  for (qsizetype i = 1; i + 1 < name.size(); ++i) {
    const bool can_break = name[i] == u' ' || name[i] == u'-';
    if (can_break && (at < 0 || std::abs(2 * i - name.size()) < std::abs(2 * at - name.size()))) at = i;
  }
  if (at < 0) return name;
  return name[at] == u' ' ? name.replace(at, 1, u'\n') : name.insert(at + 1, u'\n');
}

QSize PictureTabBar::tabSizeHint(int index) const {
  const QSize hint = QTabBar::tabSizeHint(index).expandedTo({0, least_tab_height});
  if (!two_lines_) return hint;
  const QSize whole = fontMetrics().size(Qt::TextShowMnemonic, tabText(index));
  const QSize in_two = fontMetrics().size(Qt::TextShowMnemonic, broken(index));
  return {hint.width() - whole.width() + in_two.width(), hint.height() + fontMetrics().lineSpacing()};
}

void PictureTabBar::initStyleOption(QStyleOptionTab* option, int index) const {
  QTabBar::initStyleOption(option, index);
  if (two_lines_) option->text = broken(index);
}

}  // namespace gritwright::desktop
