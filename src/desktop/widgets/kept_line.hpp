#pragma once
#include <QLineEdit>
#include <QObject>

namespace gritwright::desktop {

/// Holds in the settings what is typed into a line and not written down yet, so that it outlives the window.
class KeptLine : public QObject {
 public:
  explicit KeptLine(QLineEdit& line);

  /// What was held under `key` stands in the line again; an empty key holds nothing, and the line is empty.
  void hold_under(const QString& key);

 private:
  QLineEdit& line_;
  QString key_;
};

}  // namespace gritwright::desktop
