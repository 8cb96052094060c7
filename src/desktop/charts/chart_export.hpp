#pragma once
#include <QByteArray>
#include <QString>

#include "picture_table.hpp"

class QWidget;

namespace gritwright::desktop {

/// A picture as a file, by the ending of its name: png, svg or pdf. Written whole or not at all. False if the ending is none of
/// these or the file could not be written.
[[nodiscard]] bool export_picture(QWidget& picture, const QString& path);

/// A file written whole or not at all.
[[nodiscard]] bool write_whole(const QString& path, const QByteArray& bytes);

/// A table as CSV, one line a row, cells quoted where they need it.
[[nodiscard]] QString csv_text(const PictureTable& table);

/// The CSV as a file, written whole or not at all.
[[nodiscard]] bool export_csv(const PictureTable& table, const QString& path);

}  // namespace gritwright::desktop
