#pragma once
#include <QString>
#include <functional>

class QSplitter;
class QWidget;

namespace gritwright::desktop {

class Bench;
class BandRow;
class PictureTabs;

/// The right half of a page: pictures and the wanted band on top, what follows from them below; divided by hand.
struct AnswerColumn {
  QSplitter* column;
  PictureTabs* pictures;
  BandRow* band;
};

struct AnswerNames {
  QString column;    ///< object names
  QString pictures;
  QString pictures_are;  ///< for screen readers
  QString band_prefix;
};

/// `add_pictures` is called before the band is made, so that the keyboard reaches the pictures first.
[[nodiscard]] AnswerColumn answer_column(Bench& bench, QWidget* page, const AnswerNames& names,
                                         const std::function<void(PictureTabs&)>& add_pictures);

}  // namespace gritwright::desktop
