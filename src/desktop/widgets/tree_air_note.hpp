#pragma once
#include <QLabel>
#include <optional>

#include "models/record_book.hpp"
#include "models/tree_ageing.hpp"
#include "workers/background_job.hpp"

namespace gritwright::desktop {

/// When the ground of a tree likely holds too little air: a hint beside its next repotting, worked out beside the window. Hidden
/// where mix and pot of its last repotting are not known.
class TreeAirNote : public QLabel {
  Q_OBJECT
 public:
  TreeAirNote(RecordBook& book, const Catalogue& catalogue, QWidget* parent = nullptr);

  void show_tree(const Tree& tree);
  [[nodiscard]] BackgroundJob& job() { return job_; }

 private:
  RecordBook& book_;
  const Catalogue& catalogue_;
  std::optional<AgeingQuestion> asked_;
  std::string day_;
  BackgroundJob job_;
};

}  // namespace gritwright::desktop
