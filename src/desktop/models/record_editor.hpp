#pragma once
// One record on screen, edited field by field: what can be read and passes the record's own check is saved as it is typed.

#include <functional>
#include <optional>
#include <utility>

#include "record_book.hpp"
#include "text.hpp"

namespace gritwright::desktop {

template <class R>
class RecordEditor {
 public:
  /// `id` of the record on screen, empty if there is none; `label` names a change for undo, from what was changed and the id.
  RecordEditor(RecordBook& book, std::function<QString()> id, std::function<QString(const QString&, const QString&)> label)
      : book_(book), id_(std::move(id)), label_(std::move(label)) {}

  [[nodiscard]] std::optional<Stored<R>> record() const { return once_ ? *once_ : read(); }

  /// Says more in the name of a change where more changes with it.
  void set_label_of(std::function<QString(const Stored<R>& was, const R& now, const QString& label)> label_of) { label_of_ = std::move(label_of); }

  /// While it lives the record is read once, however many fields are filled from it. Nothing may be saved meanwhile.
  class ReadOnce {
   public:
    explicit ReadOnce(const RecordEditor& editor) : editor_(editor) { editor_.once_ = editor_.read(); }
    ~ReadOnce() { editor_.once_.reset(); }
    ReadOnce(const ReadOnce&) = delete;
    ReadOnce& operator=(const ReadOnce&) = delete;

   private:
    const RecordEditor& editor_;
  };

  /// Saves the record as `change` leaves it, or says what is wrong with that; then it stays as it was.
  Problems save(const QString& what, const std::function<void(R&)>& change) { return save_telling(what, change, {}); }

  /// The same as a step of its own that the log tells with `log`.
  Problems save_telling(const QString& what, const std::function<void(R&)>& change, std::optional<LogEntry> log) {
    const auto was = read();
    if (!was) return id_().isEmpty() ? Problems{} : Problems{not_there(ref_to(Id<R>{id_().toStdString()}))};
    R now = was->record;
    change(now);
    if (Problems problems = check(now); !problems.empty()) return problems;
    if (now == was->record) return {};
    Change step;
    const QString label = label_(what, id_());
    step.label = (label_of_ ? label_of_(*was, now, label) : label).toStdString();
    step.edits.push_back({ref_to(was->id), was->revision, Record(now)});
    if (!log) step.merge_key = QStringLiteral("%1/%2/%3").arg(QString::fromUtf8(kind_name(kind_of<R>).data()), id_(), what).toStdString();
    step.log = std::move(log);
    book_.apply(std::move(step));
    return {};
  }

  [[nodiscard]] std::function<QString()> shown(std::function<QString(const R&)> text) const {
    return [this, text = std::move(text)]() -> QString {
      const auto stored = record();
      return stored ? text(stored->record) : QString();
    };
  }

  /// Words as they are.
  std::function<Problems(const QString&)> words(const QString& what, std::function<void(R&, std::string)> set) {
    return [this, what, set = std::move(set)](const QString& text) { return save(what, [&](R& record) { set(record, text.trimmed().toStdString()); }); };
  }

  /// An empty text means "not known"; what can't be read is not saved.
  template <class Parse, class Set>
  std::function<Problems(const QString&)> taken(const QString& what, Parse parse, Set set) {
    return [this, what, parse, set](const QString& text) -> Problems {
      if (text.trimmed().isEmpty()) return save(what, [&](R& record) { set(record, {}); });
      const auto value = parse(text.trimmed().toStdString());
      if (!value) return value.problems();
      return save(what, [&](R& record) { set(record, *value); });
    };
  }

 private:
  [[nodiscard]] std::optional<Stored<R>> read() const {
    if (id_().isEmpty()) return std::nullopt;
    try {
      return book_.workbook().find(Id<R>{id_().toStdString()});
    } catch (const WorkbookTrouble& trouble) {
      emit book_.told(sentence_text(trouble.problem()));
      return std::nullopt;
    }
  }

  RecordBook& book_;
  std::function<QString()> id_;
  std::function<QString(const QString&, const QString&)> label_;
  std::function<QString(const Stored<R>&, const R&, const QString&)> label_of_;
  mutable std::optional<std::optional<Stored<R>>> once_;
};

}  // namespace gritwright::desktop
