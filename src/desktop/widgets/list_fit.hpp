#pragma once
#include <QFont>
#include <QList>
#include <QObject>
#include <QString>
#include <QTimer>
#include <vector>

class QTableView;

namespace gritwright::desktop {

/// A day as wide as the reader's locale writes it, on one line.
[[nodiscard]] QString widest_day();

/// Keeps the names in a list of the record readable. They stand in the second column, which takes what room the others leave; where large text or a narrow
/// window leaves too little, a row gets as many lines as its words need, those of the others are broken where that saves lines, and at last the list scrolls sideways.
class ListFit : public QObject {
  Q_OBJECT
 public:
  struct Column {
    int column;
    QString widest;            ///< a text that is hardly ever longer, for rows that are not looked at; it may be broken at its blanks
    bool can_wait = false;     ///< the form beside the list says it too: it is what one scrolls to
  };

  /// Lives as long as the table. `names_in_one_line`: so many signs of a name must have room where not all names are looked at, else rows get more lines.
  ListFit(QTableView& table, std::vector<Column> columns, int names_in_one_line = 13);

  /// Widths of the columns in pixels, in the order they were given; 0 for those nobody dragged, which follow what they hold. Notes those just dragged.
  [[nodiscard]] QList<int> dragged();
  /// Widths of before; those of another list, not as many, change nothing.
  void bring_back(const QList<int>& dragged);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  /// A text's widths, which tell without laying it out how many lines it needs.
  struct Words {
    int whole = 0;
    std::vector<int> each{};
  };
  struct Widths {
    int names = 0;
    std::vector<int> others;
  };

  [[nodiscard]] int advance(const QString& text) const;
  [[nodiscard]] Words words_of(const QString& text) const;
  [[nodiscard]] int lines_of(const Words& words, int width) const;
  /// By its contents, with its heading in one line and in two, and with its words broken.
  [[nodiscard]] int wide(std::size_t at) const;
  [[nodiscard]] int close(std::size_t at) const;
  [[nodiscard]] int narrow(std::size_t at) const;
  /// As dragged, but no closer than its longest word; else by its contents.
  [[nodiscard]] int wanted(std::size_t at) const;
  [[nodiscard]] int room_for_names() const;
  [[nodiscard]] int longest_word_of_names() const;
  void keep_least_width();
  /// Many rows are one as high as the other: to look at each of them would take too long.
  [[nodiscard]] bool looks_at_all() const;
  void measure();
  void note_dragged();
  void look_again(int after);
  void fit();
  void show_wide();
  void show_narrow(int room);
  [[nodiscard]] Widths with_fewest_lines(int room) const;
  [[nodiscard]] int cost_of(const Widths& widths) const;
  [[nodiscard]] int lines_needed(int row, const Widths& widths) const;
  void let_scroll(bool scrolls);
  void set_lines(const std::vector<int>& lines);

  QTableView& table_;
  std::vector<Column> columns_;
  int names_in_one_line_;
  std::vector<std::vector<Words>> rows_;  ///< of those looked at, the names' first
  std::vector<int> set_;                  ///< widths of the others, as they were set in a wide window
  QList<int> dragged_;                    ///< 0 for those that were not dragged
  QFont font_;
  QTimer again_;
  int blank_ = 0;
  int fitted_to_ = -1;
  bool is_measured_ = false;
  bool is_narrow_ = false;
  bool scrolls_ = false;
};

}  // namespace gritwright::desktop
