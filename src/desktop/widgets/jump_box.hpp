#pragma once
#include <QDialog>
#include <functional>
#include <vector>

class QLineEdit;
class QListWidget;

namespace gritwright::desktop {

/// A line to type into and what fits below it: any bag, mix, tree, sheet or action. Enter goes there, Escape closes.
class JumpBox : public QDialog {
  Q_OBJECT
 public:
  struct Target {
    QString text;  ///< as listed: "bag K-07, pumice"
    std::function<void()> go;
  };
  /// What fits the words typed so far, best first.
  using Find = std::function<std::vector<Target>(const QString& words)>;

  explicit JumpBox(Find find, QWidget* parent = nullptr);

  void open_empty();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void search();
  void go();

  Find find_;
  QLineEdit* words_;
  QListWidget* list_;
  std::vector<Target> targets_;
};

/// True if every word of `words` is somewhere in `text`, whatever its case.
[[nodiscard]] bool fits(const QString& text, const QString& words);

}  // namespace gritwright::desktop
