#include "chart_export.hpp"

#include <QBuffer>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QPixmap>
#include <QSaveFile>
#include <QSvgGenerator>
#include <QWidget>

namespace gritwright::desktop {

namespace {

constexpr double picture_scale = 2;  // sharp on paper

QByteArray png_of(QWidget& picture) {
  QPixmap pixmap(picture.size() * picture_scale);
  pixmap.setDevicePixelRatio(picture_scale);
  pixmap.fill(picture.palette().color(QPalette::Base));
  picture.render(&pixmap);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  return pixmap.save(&buffer, "PNG") ? bytes : QByteArray();
}

QByteArray svg_of(QWidget& picture) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setSize(picture.size());
  generator.setViewBox(QRect(QPoint(0, 0), picture.size()));
  generator.setTitle(picture.accessibleName());
  generator.setDescription(picture.accessibleDescription());
  QPainter painter(&generator);
  picture.render(&painter);
  painter.end();
  return bytes;
}

QByteArray pdf_of(QWidget& picture) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  // The screen's, or fonts laid out for it come out many times too large; lines and text are drawings all the same.
  writer.setResolution(96);
  writer.setTitle(picture.accessibleName());
  // A page of the picture's own shape, so that nobody has to crop it.
  writer.setPageSize(QPageSize(QSizeF(picture.size()) * 0.75, QPageSize::Point));
  writer.setPageMargins({});
  QPainter painter(&writer);
  painter.scale(writer.width() / double(picture.width()), writer.height() / double(picture.height()));
  picture.render(&painter);
  painter.end();
  return bytes;
}

QString quoted(QString name) {
  if (!name.contains(u',') && !name.contains(u'"') && !name.contains(u'\n')) return name;
  return u'"' + name.replace(u'"', QStringLiteral("\"\"")) + u'"';
}

}  // namespace

bool write_whole(const QString& path, const QByteArray& bytes) {
  QSaveFile file(path);
  return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
}

bool export_picture(QWidget& picture, const QString& path) {
  QByteArray bytes;
  if (path.endsWith(QStringLiteral(".png"), Qt::CaseInsensitive)) bytes = png_of(picture);
  else if (path.endsWith(QStringLiteral(".svg"), Qt::CaseInsensitive)) bytes = svg_of(picture);
  else if (path.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive)) bytes = pdf_of(picture);
  return !bytes.isEmpty() && write_whole(path, bytes);
}

QString csv_text(const PictureTable& table) {
  QStringList lines;
  const auto line = [&lines](const QStringList& cells) {
    QStringList safe;
    for (const QString& cell : cells) safe << quoted(cell);
    lines << safe.join(u',');
  };
  line(table.heading);
  for (const QStringList& row : table.rows) line(row);
  return lines.join(u'\n') + u'\n';
}

bool export_csv(const PictureTable& table, const QString& path) { return write_whole(path, csv_text(table).toUtf8()); }

}  // namespace gritwright::desktop
