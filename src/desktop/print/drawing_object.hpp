#pragma once
#include <QObject>
#include <QTextObjectInterface>
#include <vector>

#include "gritwright/report/print_document.hpp"

namespace gritwright::desktop {

/// Draws a picture of report/ inside a text document, in lines. The drawings are named by their index.
class DrawingObject : public QObject, public QTextObjectInterface {
  Q_OBJECT
  Q_INTERFACES(QTextObjectInterface)
 public:
  static constexpr int object_type = 4097;   // QTextFormat::UserObject + 1
  static constexpr int index_property = 4098;

  /// `points_per_mm` of the device the document is laid out for.
  DrawingObject(double points_per_mm, QObject* parent) : QObject(parent), points_per_mm_(points_per_mm) {}

  /// Gives the index to name it by.
  int add(const PrintDrawing& drawing);

  QSizeF intrinsicSize(QTextDocument* document, int position, const QTextFormat& format) override;
  void drawObject(QPainter* painter, const QRectF& area, QTextDocument* document, int position, const QTextFormat& format) override;

 private:
  double points_per_mm_;
  std::vector<PrintDrawing> drawings_;
};

}  // namespace gritwright::desktop
