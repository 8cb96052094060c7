#pragma once
#include <QStringList>
#include <QWidget>
#include <functional>
#include <vector>

#include "form_row.hpp"
#include "gritwright/report/quantity_text.hpp"
#include "gritwright/result.hpp"
#include "models/typed_text.hpp"

class QGridLayout;
class QLineEdit;

namespace gritwright::desktop {

/// Fields of one record: what can be read is saved as it is typed, what cannot stays in its field with the fault below it. What was changed
/// elsewhere under a field that is being typed into is not typed over: both are shown, Enter keeps what was typed, Escape what came.
class RecordForm : public QWidget {
  Q_OBJECT
 public:
  struct Row {
    QString object_name;
    QString label;  ///< with its mnemonic
    Kind kind = Kind::words;
    QString hint;
    std::function<QString()> show;                    ///< the record's own text
    std::function<Problems(const QString&)> take;     ///< saves a text that was typed, or says what is wrong with it
    std::function<bool()> is_shown = {};              ///< empty: always
    std::function<QString()> label_now = {};          ///< for labels that depend on the record, e.g. diameter instead of length
    std::function<bool()> waits_for_end = {};         ///< true: saved as a whole when typing ends, for what each sign would book; empty: sign by sign
    std::function<Problems()> missing = {};           ///< what the record needs here before the rest can be saved; empty: nothing
    std::function<QString()> kept_under = {};         ///< key of the settings that hold what waits, so that it outlives the window
  };

  explicit RecordForm(QWidget* parent = nullptr);

  QLineEdit* add(Row row);
  void add(const QString& label, QWidget* widget);
  void set_units(UnitSystem units);

  /// Shows the record anew; `other` when it is another record, so that nothing half-typed is carried over.
  void refresh(bool other);
  /// Saves what waits for the end of typing, as Enter and leaving the field do; what can't be saved stays in its field with the fault.
  void end_typing();
  /// What was typed and saved is no longer being typed, as after an undo that takes it back.
  void forget_typing();
  /// Something is being typed, or stands there unread.
  [[nodiscard]] bool has_typing() const;
  [[nodiscard]] QStringList typed_texts() const;
  /// While the record is gone nothing is saved or shown anew: what was typed stays.
  void set_gone(bool gone);
  /// Saves what was typed while the record was gone, as if it were typed now.
  void save_typed();
  void drop_typing();

 signals:
  void typing_ended();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Shown {
    Row row;
    QLineEdit* field;
    FormRow parts;
    QString known = {};      ///< the record's text that the field was shown or saved as
    bool typed_in = false;   ///< since it was shown
    bool waits = false;      ///< was typed and is saved when typing ends
    bool kept = false;       ///< waited when the window went away
  };

  void typed(std::size_t at, const QString& text);
  void take(Shown& shown, const QString& text);
  void take_waiting(Shown& shown);
  [[nodiscard]] static bool changed_elsewhere(const Shown& shown);
  void tell_change_elsewhere(const Shown& shown) const;
  void show_again(Shown& shown);
  /// What waited when the window went away stands in its field again, not saved: it may be half a text.
  void show_kept(Shown& shown);
  static void keep(const Shown& shown, const QString& text);
  static void forget_kept(const Shown& shown);
  /// Enter goes to the next field in view, so that a tape measure can be read off line by line.
  void move_on(std::size_t from);
  void show_fault(const Shown& shown, const Problems& problems) const;
  void show_fault(const Shown& shown, const QString& fault) const;

  UnitSystem units_ = UnitSystem::metric;
  QGridLayout* grid_;
  bool saving_ = false;
  bool gone_ = false;
  std::vector<Shown> rows_;
};

}  // namespace gritwright::desktop
