#pragma once
#include <QWidget>
#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;
class QUrl;

namespace gritwright::desktop {

class ManualReader;

/// The manual, compiled in: chapters in the order of the work and the science behind them, searched by words.
class ManualPage : public QWidget {
  Q_OBJECT
 public:
  explicit ManualPage(QWidget* parent = nullptr);

  /// A page by its path under docs without ending: "manual/sieving". Ends a search.
  void open(const QString& page);
  /// The page on screen, as `open` takes it.
  [[nodiscard]] QString current() const;
  /// Narrows the list to pages that hold all these words.
  void search(const QString& words);

 signals:
  /// The reader wants to go on with the work.
  void left();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  struct Page {
    QString path;
    QString title;
    QString text;
  };
  void read_pages();
  void fill_list();
  void choose();
  void follow(const QUrl& link);
  void mark_words();

  std::vector<Page> all_;
  QLineEdit* words_;
  QLabel* found_;
  QListWidget* list_;
  ManualReader* reader_;
};

}  // namespace gritwright::desktop
