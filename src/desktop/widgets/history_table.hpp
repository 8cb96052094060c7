#pragma once
#include <QStringList>
#include <QTableWidget>
#include <vector>

namespace gritwright::desktop {

/// What was done to a tree, a day a row. Columns that say nothing are left out; where the others have no room beside each other, what they say stands in
/// one column of words.
class HistoryTable : public QTableWidget {
  Q_OBJECT
 public:
  struct Row {
    QStringList cells;  ///< by the headings; the first is the day
    QString words;      ///< the rest of them in one
  };

  HistoryTable(const QStringList& headings, const QString& heading_of_words, QWidget* parent = nullptr);

  void show_rows(const std::vector<Row>& rows);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  [[nodiscard]] bool says_something(int column) const;
  void arrange();
  void give_last_the_rest();

  int words_column_;
  int arranged_width_ = 0;
};

}  // namespace gritwright::desktop
