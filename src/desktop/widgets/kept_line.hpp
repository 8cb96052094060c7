#pragma once
#include <QComboBox>
#include <QLineEdit>
#include <QObject>
#include <QString>

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

/// The same for what is chosen beside such a line: without it the line would say another thing than was meant.
class KeptChoice : public QObject {
 public:
  /// `box`: its first entry stands for nothing chosen, and all have data.
  explicit KeptChoice(QComboBox& box);

  void hold_under(const QString& key);
  /// Once it is written down.
  void forget();

 private:
  QComboBox& box_;
  QString key_;
};

}  // namespace gritwright::desktop
