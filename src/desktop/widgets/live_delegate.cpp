#include "live_delegate.hpp"

#include <QEvent>
#include <QLineEdit>
#include <utility>

#include "undo_keys.hpp"

namespace gritwright::desktop {

LiveDelegate::LiveDelegate(QString editor_name, QObject* parent) : QStyledItemDelegate(parent), editor_name_(std::move(editor_name)) {}

QWidget* LiveDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const {
  auto* editor = new QLineEdit(parent);
  editor->setObjectName(editor_name_);
  const QString name = index.data(Qt::AccessibleTextRole).toString();
  editor->setAccessibleName(name.isEmpty() ? index.model()->headerData(index.column(), Qt::Horizontal).toString() : name);
  editor->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  editor->setFrame(false);
  auto* self = const_cast<LiveDelegate*>(this);
  connect(editor, &QLineEdit::textEdited, self, [self, editor] { emit self->commitData(editor); });
  return editor;
}

void LiveDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* line = static_cast<QLineEdit*>(editor);
  const QString text = index.data(Qt::EditRole).toString();
  if (line->text() != text && !line->isModified()) line->setText(text);
}

void LiveDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
  model->setData(index, static_cast<QLineEdit*>(editor)->text(), Qt::EditRole);
}

bool LiveDelegate::eventFilter(QObject* watched, QEvent* event) {
  const auto* const line = qobject_cast<QLineEdit*>(watched);
  if (line == nullptr || !is_undo_of_window(*line, *event)) return QStyledItemDelegate::eventFilter(watched, event);
  event->ignore();
  return true;
}

}  // namespace gritwright::desktop
