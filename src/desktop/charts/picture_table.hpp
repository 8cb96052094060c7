#pragma once
#include <QString>
#include <QStringList>
#include <vector>

namespace gritwright::desktop {

/// What a picture shows, as heading and rows of text.
struct PictureTable {
  QStringList heading;
  std::vector<QStringList> rows;
  friend bool operator==(const PictureTable&, const PictureTable&) = default;
};

}  // namespace gritwright::desktop
