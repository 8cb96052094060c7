#pragma once
#include <QFrame>
#include <functional>
#include <vector>

#include "models/record_book.hpp"

class QLabel;

namespace gritwright::desktop {

class RecordForm;

/// Stands above a form whose record went away, deleted in another window say, while something was typed into it: what was typed stays in
/// sight, and the grower brings the record back with it or lets it go.
class GoneNotice : public QFrame {
  Q_OBJECT
 public:
  /// `prefix` of object names: "bag"; `more_typed` tells of fields beside the forms; empty: there are none.
  GoneNotice(RecordBook& book, const QString& prefix, std::vector<RecordForm*> forms, std::function<bool()> more_typed, QWidget* parent = nullptr);

  /// For a record that a list has no more: true while what was typed into it is kept for it; the page then stays as it is.
  /// `name` as the grower knows it; empty: the id.
  bool hold(const RecordRef& ref, const QString& name = {});
  /// The same for a part of a record, as a tree that was taken off its day: `put_back` puts it there again.
  bool hold_part(const RecordRef& part, const QString& name, std::function<void()> put_back);
  [[nodiscard]] bool is_holding() const { return holding_; }
  /// The record is there: what was kept for it is saved.
  void is_back();
  /// Another record is chosen: what was typed is told once more and goes.
  void leave();
  [[nodiscard]] static QString not_saved_words(const QString& name, const QString& typed);

 signals:
  void let_go();

 private:
  void begin(const RecordRef& ref, const QString& name);
  void bring_back();
  void stop_holding();
  [[nodiscard]] bool has_typing() const;

  RecordBook& book_;
  std::vector<RecordForm*> forms_;
  std::function<bool()> more_typed_;
  QLabel* words_;
  RecordRef ref_;
  QString name_;
  std::function<void()> put_back_;  ///< of a part; empty for a whole record
  bool holding_ = false;
};

}  // namespace gritwright::desktop
