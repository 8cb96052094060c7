#pragma once
#include <QFont>
#include <QObject>
#include <QString>
#include <vector>

class QTableView;

namespace gritwright::desktop {

/// A day as wide as the reader's locale writes it, on one line.
[[nodiscard]] QString widest_day();

/// Keeps the names in a list of the record readable. They stand in the second column, which takes what room the others leave; where large text or a narrow
/// window leaves too little, rows get more lines, the others break their words, and at last go.
class ListFit : public QObject {
 public:
  struct Column {
    int column;
    QString widest;       ///< a text that is hardly ever longer; it may be broken at its blanks
    bool can_go = false;  ///< the form beside the list says it too
  };

  /// Lives as long as the table. `names_in_one_line`: so many signs of a name must have room, and the names there are, else rows get more lines.
  ListFit(QTableView& table, std::vector<Column> columns, int names_in_one_line = 13);

  /// Columns as wide as they are in a wide window.
  void show_wide();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  [[nodiscard]] int advance(const QString& text) const;
  [[nodiscard]] int wide(const Column& column) const;
  [[nodiscard]] int narrow(const Column& column) const;
  [[nodiscard]] int room_for_names() const;
  [[nodiscard]] int longest_word_of_names() const;
  [[nodiscard]] int widest_word(const QString& text) const;
  [[nodiscard]] int rows_to_look_at() const;
  void fit();
  void show_narrow(int room);
  /// By the first rows, at so much room for names.
  [[nodiscard]] int lines_needed(int names) const;
  void set_lines(int lines);

  QTableView& table_;
  std::vector<Column> columns_;
  int names_in_one_line_;
  std::vector<int> dragged_;  ///< widths of the columns in a wide window, while they are narrow
  QFont font_;
  bool is_narrow_ = false;
};

}  // namespace gritwright::desktop
