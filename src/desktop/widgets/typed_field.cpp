#include "typed_field.hpp"

#include <QKeyEvent>
#include <utility>

namespace gritwright::desktop {

TypedField::TypedField(Bench& bench, Kind kind, std::function<QString()> what, QString place, TextPlace text, QWidget* parent)
    : QLineEdit(parent), bench_(bench), kind_(kind), what_(std::move(what)), place_(std::move(place)), text_(std::move(text)) {
  if (kind != Kind::words) setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  connect(this, &QLineEdit::textEdited, this, &TypedField::write);
  connect(this, &QLineEdit::editingFinished, &bench_, &Bench::end_typing);
  connect(&bench_, &Bench::changed, this, &TypedField::read);
  connect(&bench_, &Bench::units_changed, this, &TypedField::read);
  connect(&bench_, &Bench::current_component_changed, this, &TypedField::read);
  read();
}

// The keys of undo are the window's: it undoes what was typed here too, and goes on with what was done before.
bool TypedField::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    const auto* const key = static_cast<QKeyEvent*>(event);
    if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
      event->ignore();
      return true;
    }
  }
  return QLineEdit::event(event);
}

void TypedField::write(const QString& typed) {
  bench_.edit(what_(), QStringLiteral("%1/%2").arg(place_).arg(bench_.current_component()), [&](BenchState& state) {
    if (QString* text = text_(state)) *text = kept_text(typed, kind_, bench_.units());
  });
}

void TypedField::read() {
  // The place is found in a mutable state; nothing is changed through it here.
  QString* kept = text_(const_cast<BenchState&>(bench_.state()));
  setEnabled(kept != nullptr);
  const QString shown = kept != nullptr ? shown_text(*kept, kind_, bench_.units()) : QString();
  // What is being typed stays as it is as long as it means what is kept.
  if (hasFocus() && kept != nullptr && kept_text(text(), kind_, bench_.units()) == *kept) return;
  if (text() == shown) return;
  setText(shown);
  if (!hasFocus()) setCursorPosition(0);
}

}  // namespace gritwright::desktop
