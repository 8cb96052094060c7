#pragma once
#include <QString>
#include <QStyledItemDelegate>

namespace gritwright::desktop {

/// Commits with every sign, so that what follows from it grows while typing and nothing typed is lost with the window, and leaves the text under the
/// cursor alone.
class LiveDelegate : public QStyledItemDelegate {
 public:
  /// `editor_name` is the object name of the line that opens.
  explicit LiveDelegate(QString editor_name, QObject* parent = nullptr);

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QString editor_name_;
};

}  // namespace gritwright::desktop
