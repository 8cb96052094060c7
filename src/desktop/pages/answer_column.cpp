#include "answer_column.hpp"

#include <QSplitter>
#include <QVBoxLayout>

#include "charts/picture_tabs.hpp"
#include "widgets/band_row.hpp"

namespace gritwright::desktop {

namespace {

/// Wide enough for a picture with its words, whatever the size of the text; else the page rather puts them below each other.
class AnswerPictures : public PictureTabs {
 public:
  using PictureTabs::PictureTabs;

  [[nodiscard]] QSize minimumSizeHint() const override {
    constexpr int least_signs = 36;
    return PictureTabs::minimumSizeHint().expandedTo({least_signs * fontMetrics().averageCharWidth(), 0});
  }
};

}  // namespace

AnswerColumn answer_column(Bench& bench, QWidget* page, const AnswerNames& names, const std::function<void(PictureTabs&)>& add_pictures) {
  AnswerColumn answer{};
  answer.column = new QSplitter(Qt::Vertical, page);
  answer.column->setObjectName(names.column);
  answer.column->setChildrenCollapsible(false);
  answer.column->setHandleWidth(8);
  auto* top = new QWidget(answer.column);
  auto* layout = new QVBoxLayout(top);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  answer.pictures = new AnswerPictures(top);
  answer.pictures->setObjectName(names.pictures);
  answer.pictures->setAccessibleName(names.pictures_are);
  add_pictures(*answer.pictures);
  layout->addWidget(answer.pictures, 1);
  answer.band = new BandRow(bench, names.band_prefix, top);
  layout->addWidget(answer.band);
  answer.column->addWidget(top);
  return answer;
}

}  // namespace gritwright::desktop
