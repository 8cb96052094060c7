#include "monkey.hpp"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QClipboard>
#include <QComboBox>
#include <QFileDialog>
#include <QFocusEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QTabBar>
#include <cstdio>
#include <cstdlib>

namespace gritwright::desktop {

namespace {

// Plain figures and what people put in their place: other decimal marks, units, words, marks of other programs, nothing readable at all.
constexpr const char16_t* typed_texts[] = {u"0",         u"1",        u"4",          u"12.5",       u"12,5",      u"250",        u"1 200",      u"0.063",          u"-3",
                                           u"1e9",       u"1e400",    u"nan",        u"inf",        u"4o",        u"5 l",        u"3 cm",       u"2 in",           u"40 %",
                                           u"1/2",       u"No. 10",   u"2026-03-14", u"2026-02-30", u"14.3.2026", u"K-07",       u"TR-01",      u"<b>bold</b>",    u"<img src=x>",
                                           u"=1+1",      u"%1 %2 %n", u"a; b, c",    u"\"quoted\"", u"pine",      u"\u677e\u6811", u"\u00e4\u00df\u00e9", u"\U0001F332", u"..",
                                           u"../../etc", u"&and",     u"'",          u"   ",        u"99999999999999999999"};

constexpr const char16_t* pasted_texts[] = {u"8\t0\n5.6\t60\n4\t120\n2\t100\npan\t5\n",
                                            u"4,75;12,5\n2;7\n",
                                            u"aperture_mm,retained_g\n4.75,12.5\n2.0,7\npan,3\n",
                                            u"12,5\n7,25\n",
                                            u"\n\t\n",
                                            u"a\tb\tc\td\te\tf\tg\th\n",
                                            u"one line",
                                            u"<table><tr><td>8</td></tr></table>"};

struct Stroke {
  Qt::Key key;
  Qt::KeyboardModifiers with = Qt::NoModifier;
};
constexpr Stroke strokes[] = {{Qt::Key_Tab},    {Qt::Key_Tab},   {Qt::Key_Backtab, Qt::ShiftModifier}, {Qt::Key_Return},  {Qt::Key_Return},
                              {Qt::Key_Escape}, {Qt::Key_Up},    {Qt::Key_Down},                       {Qt::Key_Down},    {Qt::Key_Left},
                              {Qt::Key_Right},  {Qt::Key_Home},  {Qt::Key_End},                        {Qt::Key_PageUp},  {Qt::Key_PageDown},
                              {Qt::Key_Delete}, {Qt::Key_Insert}, {Qt::Key_Backspace},                 {Qt::Key_Space},   {Qt::Key_F2},
                              {Qt::Key_Plus},   {Qt::Key_Minus}, {Qt::Key_A, Qt::ControlModifier},     {Qt::Key_C, Qt::ControlModifier},
                              {Qt::Key_V, Qt::ControlModifier}, {Qt::Key_X, Qt::ControlModifier},      {Qt::Key_Delete, Qt::ControlModifier},
                              {Qt::Key_Down, Qt::ShiftModifier}, {Qt::Key_F1},                         {Qt::Key_Z, Qt::ControlModifier}};

constexpr const char* file_names[] = {"sieve.csv", "sieve.json", "container.json", "garbage.csv", "photo.png", "out.png", "out.svg", "out.pdf", "out.csv", "no_ending", "none/below/out.pdf"};

// These dress the whole window anew, which takes as long as a hundred other actions.
bool is_slow(const QString& action) {
  return action.startsWith(QStringLiteral("action_theme")) || action == QStringLiteral("action_larger") || action == QStringLiteral("action_smaller") || action == QStringLiteral("action_normal_text");
}

void collect(const QMenu& menu, std::vector<QAction*>& into) {
  for (QAction* action : menu.actions()) {
    if (action->menu() != nullptr) collect(*action->menu(), into);
    else if (!action->isSeparator() && action->isEnabled() && action->objectName() != QStringLiteral("action_quit")) into.push_back(action);
  }
}

QString called(const QWidget& widget) { return QStringLiteral("%1 \"%2\"").arg(QString::fromLatin1(widget.metaObject()->className()), widget.objectName()); }

}  // namespace

Watchdog::Watchdog(std::chrono::seconds patience)
    : thread_([this, patience] {
        std::uint64_t heard = 0;
        auto since = std::chrono::steady_clock::now();
        while (!done_) {
          std::this_thread::sleep_for(std::chrono::milliseconds(100));
          const auto now = std::chrono::steady_clock::now();
          if (beats_ != heard) {
            heard = beats_;
            since = now;
          }
          if (now - since < patience) continue;
          std::fputs("nothing has come back for a long while: a dialogue that nobody answers, or a loop\n", stderr);
          std::abort();
        }
      }) {}

Watchdog::~Watchdog() {
  done_ = true;
  thread_.join();
}

Monkey::Monkey(OpenWindow& open, std::mt19937& random, const QString& folder, Watchdog& watchdog) : open_(open), random_(random), folder_(folder), watchdog_(watchdog) {
  QObject::connect(&answering_, &QTimer::timeout, &open.window, [this] { answer(); });
  answering_.start(5);
}

void Monkey::note(const QString& what) {
  // A crash leaves no other trace than this.
  if (const char* file = std::getenv("GRITWRIGHT_MONKEY_TRAIL")) {
    if (std::FILE* out = std::fopen(file, "a")) {
      std::fputs((what + u'\n').toStdString().c_str(), out);
      std::fclose(out);
    }
  }
  trail_ << what;
  if (trail_.size() > 40) trail_.removeFirst();
}

std::string Monkey::trail() const { return trail_.join(u'\n').toStdString(); }

void Monkey::act() {
  watchdog_.beat();
  if (QWidget* popup = QApplication::activePopupWidget()) {
    in_popup(*popup);
  } else if (const int what = below(100); what < 25) {
    type();
  } else if (what < 45) {
    press();
  } else if (what < 72) {
    click();
  } else if (what < 76) {
    drag();
  } else if (what < 89) {
    trigger();
  } else if (what < 93) {
    paste();
  } else {
    undo_or_redo();
  }
  QApplication::processEvents();
}

void Monkey::rest() {
  for (int tries = 0; tries < 20 && QApplication::activePopupWidget() != nullptr; ++tries) {
    QApplication::activePopupWidget()->close();
    QApplication::processEvents();
  }
  for (QWidget* top : QApplication::topLevelWidgets()) {
    if (top != &open_.window && top->isVisible()) top->close();
  }
  if (QWidget* focused = QApplication::focusWidget()) focused->clearFocus();
  QApplication::processEvents();
}

// Mostly in the window; now and then in what stands before it.
QWidget* Monkey::somewhere() {
  QWidget* top = &open_.window;
  for (QWidget* other : QApplication::topLevelWidgets()) {
    if (other != top && other->isVisible() && other->windowType() == Qt::Dialog && chance(60)) top = other;
  }
  std::vector<QWidget*> found;
  for (QWidget* widget : top->findChildren<QWidget*>()) {
    if (widget->isVisible() && widget->isEnabled() && !widget->rect().isEmpty() && widget->window() == top && qobject_cast<QMenuBar*>(widget) == nullptr) found.push_back(widget);
  }
  return found.empty() ? top : found[static_cast<std::size_t>(below(static_cast<int>(found.size())))];
}

void Monkey::type() {
  const QString text = QString::fromUtf16(typed_texts[below(std::size(typed_texts))]);
  note(QStringLiteral("type ") + text);
  // Now and then into a field that was looked for, as somebody who knows where to write.
  if (chance(40)) {
    if (auto* field = qobject_cast<QLineEdit*>(somewhere())) {
      field->setFocus();
      if (chance(50)) field->selectAll();
    }
  }
  for (const QChar sign : text) {
    QWidget* focused = QApplication::focusWidget();
    if (focused == nullptr) return;
    QKeyEvent down(QEvent::KeyPress, 0, Qt::NoModifier, QString(sign));
    QApplication::sendEvent(focused, &down);
  }
  if (chance(50) && QApplication::focusWidget() != nullptr) QTest::keyClick(QApplication::focusWidget(), chance(50) ? Qt::Key_Return : Qt::Key_Tab);
}

void Monkey::press() {
  const Stroke stroke = strokes[below(std::size(strokes))];
  QWidget* focused = QApplication::focusWidget();
  if (focused == nullptr) focused = &open_.window;
  note(QStringLiteral("press %1 in %2").arg(QKeySequence(static_cast<int>(stroke.key) | static_cast<int>(stroke.with)).toString(), called(*focused)));
  QTest::keyClick(focused, stroke.key, stroke.with);
}

void Monkey::click() {
  QWidget* widget = somewhere();
  const QRect inside = widget->rect();
  QPoint at(below(inside.width()), below(inside.height()));
  if (auto* bar = qobject_cast<QTabBar*>(widget); bar != nullptr && bar->count() > 0) at = bar->tabRect(below(bar->count())).center();
  if (auto* button = qobject_cast<QAbstractButton*>(widget)) at = button->rect().center();
  const int how = below(20);
  note(QStringLiteral("%1 %2 at %3,%4").arg(how == 0 ? QStringLiteral("right click") : how == 1 ? QStringLiteral("double click") : QStringLiteral("click"), called(*widget)).arg(at.x()).arg(at.y()));
  if (how == 0) {
    QContextMenuEvent wanted(QContextMenuEvent::Mouse, at, widget->mapToGlobal(at));
    QApplication::sendEvent(widget, &wanted);
  } else if (how == 1) {
    QTest::mouseDClick(widget, Qt::LeftButton, Qt::NoModifier, at);
  } else {
    QTest::mouseClick(widget, Qt::LeftButton, how == 2 ? Qt::ControlModifier : how == 3 ? Qt::ShiftModifier : Qt::NoModifier, at);
  }
}

void Monkey::drag() {
  QPointer<QWidget> widget = somewhere();
  const QRect inside = widget->rect();
  const auto place = [&] { return QPoint(below(inside.width()), below(inside.height())); };
  note(QStringLiteral("drag in ") + called(*widget));
  QTest::mousePress(widget, Qt::LeftButton, Qt::NoModifier, place());
  for (int moves = below(4); moves > 0 && widget != nullptr; --moves) QTest::mouseMove(widget, place());
  if (widget != nullptr) QTest::mouseRelease(widget, Qt::LeftButton, Qt::NoModifier, place());
}

void Monkey::trigger() {
  std::vector<QAction*> actions;
  for (QAction* top : open_.window.menuBar()->actions()) collect(*top->menu(), actions);
  QAction* action = actions[static_cast<std::size_t>(below(static_cast<int>(actions.size())))];
  if (is_slow(action->objectName()) && !chance(5)) return;
  note(QStringLiteral("trigger ") + action->objectName());
  action->trigger();
}

void Monkey::paste() {
  QGuiApplication::clipboard()->setText(QString::fromUtf16(pasted_texts[below(std::size(pasted_texts))]));
  if (QWidget* focused = QApplication::focusWidget()) {
    note(QStringLiteral("paste into ") + called(*focused));
    QTest::keyClick(focused, Qt::Key_V, Qt::ControlModifier);
  }
}

void Monkey::undo_or_redo() {
  constexpr const char* steps[] = {"action_undo", "action_redo", "action_record_undo", "action_record_redo"};
  const char* name = steps[below(std::size(steps))];
  auto* action = open_.window.findChild<QAction*>(QLatin1String(name));
  note(QString::fromLatin1(name));
  for (int times = 1 + below(3); times > 0 && action->isEnabled(); --times) action->trigger();
}

void Monkey::in_popup(QWidget& popup) {
  QPointer<QWidget> open = &popup;
  const int down = below(4);
  const bool take = chance(60);
  note(QStringLiteral("in popup %1: %2 down, %3").arg(called(popup)).arg(down).arg(take ? QStringLiteral("take") : QStringLiteral("leave")));
  const auto stroke = [&](Qt::Key key) {
    if (open == nullptr) return;
    QWidget* inner = open->focusWidget();
    QTest::keyClick(inner != nullptr ? inner : open.data(), key);
  };
  for (int i = 0; i < down; ++i) stroke(Qt::Key_Down);
  stroke(take ? Qt::Key_Return : Qt::Key_Escape);
  QApplication::processEvents();
  // Not every popup goes with a key: it goes with a click beside it.
  if (open != nullptr && open->isVisible()) open->close();
}

// Called by a timer, so that it also comes to those dialogues and menus that hold up whoever opened them.
void Monkey::answer() {
  if (auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget())) {
    // A menu of the bar waits for nobody; the button with those that don't fit the bar does.
    if (const auto* bar = qobject_cast<QMenuBar*>(menu->parentWidget()); bar != nullptr && bar->actions().contains(menu->menuAction())) return;
    note(QStringLiteral("menu answered"));
    const QList<QAction*> actions = menu->actions();
    if (!actions.isEmpty() && chance(50)) {
      menu->setActiveAction(actions[below(static_cast<int>(actions.size()))]);
      QTimer::singleShot(0, menu, [menu] { QTest::keyClick(menu, Qt::Key_Return); });
    } else {
      QTimer::singleShot(0, menu, [menu] { menu->close(); });
    }
    return;
  }
  if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) answer_dialogue(*dialog);
}

void Monkey::answer_dialogue(QDialog& dialog) {
  times_answered_ = last_dialogue_ == &dialog ? times_answered_ + 1 : 0;
  last_dialogue_ = &dialog;
  if (times_answered_ == 0) ++answered_;
  note(QStringLiteral("answer %1 \"%2\"").arg(called(dialog), dialog.windowTitle()));
  // What is answered here may open the next dialogue before it returns; the timer must be free by then.
  if (auto* box = qobject_cast<QMessageBox*>(&dialog)) {
    const QList<QAbstractButton*> buttons = box->buttons();
    QAbstractButton* button = buttons.isEmpty() ? nullptr : buttons[below(static_cast<int>(buttons.size()))];
    if (button != nullptr && times_answered_ < 5) return QTimer::singleShot(0, button, [button] { button->click(); });
  } else if (times_answered_ < 2 && chance(75)) {
    name_a_file(dialog);
    return QTimer::singleShot(0, &dialog, [&dialog] { QMetaObject::invokeMethod(&dialog, "accept"); });
  }
  QTimer::singleShot(0, &dialog, [&dialog] { dialog.reject(); });
}

void Monkey::name_a_file(QDialog& dialog) {
  const QString file = QStringLiteral("%1/%2").arg(folder_, QLatin1String(file_names[below(std::size(file_names))]));
  if (auto* files = qobject_cast<QFileDialog*>(&dialog)) {
    files->setDirectory(folder_);
    files->selectFile(files->fileMode() == QFileDialog::Directory ? folder_ : file);
    return;
  }
  for (QLineEdit* line : dialog.findChildren<QLineEdit*>()) {
    // A printer that is a file.
    if (line->text().contains(QStringLiteral(".pdf")) || line->objectName() == QStringLiteral("filename")) line->setText(folder_ + QStringLiteral("/printed.pdf"));
  }
}

}  // namespace gritwright::desktop
