#pragma once
#include <QObject>
#include <QString>
#include <memory>
#include <optional>

#include "gritwright/domain/material.hpp"
#include "gritwright/domain/root_mass_plan.hpp"
#include "gritwright/models/root_plan.hpp"
#include "gritwright/models/root_views.hpp"
#include "gritwright/report/root_section.hpp"
#include "record_book.hpp"
#include "workers/background_job.hpp"

namespace gritwright::desktop {

/// What the plan on screen comes to. Views are those of `worked`.
struct RootPlanOutcome {
  RootMassPlan plan;
  Problems problems;  ///< why there is no answer
  std::optional<RootPlanAnswer> answer;
  std::size_t worked = 0;  ///< of the answer's plans
  std::optional<RootViews> views;
  std::optional<PotGrowth> growth;
  std::optional<RootSection> section;  ///< the mix in the pot of `worked`
  std::string mix_name;
  bool coarse = false;  ///< while the tree is dragged
};

/// For a sheet that lies with its tree: the plan called by the numbers of tree and plan, its pot by that of the record's pot that it is.
[[nodiscard]] RootMassPlan with_numbers(const OpenWorkbook& workbook, const Stored<KeptRootMassPlan>& kept, RootMassPlan plan);

/// The root-mass plan on screen: kept in the record, worked out beside the window; an answer that is no longer asked for is dropped.
class RootPlanDesk : public QObject {
  Q_OBJECT
 public:
  RootPlanDesk(RecordBook& book, const Catalogue& catalogue, QObject* parent = nullptr);

  /// Shows a kept plan, or none for an empty id.
  void open(const QString& id);
  [[nodiscard]] const QString& current() const { return current_; }
  [[nodiscard]] const std::optional<RootMassPlan>& plan() const { return plan_; }
  [[nodiscard]] std::optional<Stored<KeptRootMassPlan>> kept() const;
  /// Saves the plan as `change` leaves it, or says what is wrong with that; then it stays as it was.
  Problems save(const QString& what, const std::function<void(RootMassPlan&)>& change);
  /// The mix that fills the rest of the pot; an empty id: none yet.
  void fill_with(const QString& mix);
  /// True while lengths of the root mass are still to be typed; nothing is worked out before.
  [[nodiscard]] bool lacks_lengths() const;
  /// Why nothing is worked out yet, as far as that is for the grower to mend: no plan, or no lengths.
  [[nodiscard]] QString wanted_first() const;
  /// A plan for a tree, as it stands now: its group, trunk base and present pot; a root mass in no known pot has no lengths yet. Empty if
  /// the tree has no group, there is neither a free pot nor a present one, or nothing was saved.
  QString plan_for(const QString& tree);

  /// The pose while it is dragged: answered coarsely and not kept until `drop`.
  void drag(const Pose& pose);
  void drop();
  [[nodiscard]] const std::optional<Pose>& dragged() const { return dragged_; }

  /// Which of plans A, B, C is drawn.
  void choose(std::size_t worked);
  /// Null before the first answer.
  [[nodiscard]] const RootPlanOutcome* outcome() const { return outcome_.get(); }
  /// The plan drawn; null where there is none.
  [[nodiscard]] const WorkedPlan* worked() const;
  [[nodiscard]] BackgroundJob& job() { return job_; }

 signals:
  void changed();
  void answered();

 private:
  void record_changed();
  [[nodiscard]] std::optional<RetentionConstants> water_of(const std::optional<Id<MixVersion>>& mix) const;
  void work(PlanDetail detail);

  RecordBook& book_;
  const Catalogue& catalogue_;
  BackgroundJob job_;
  QString current_;
  std::string text_;  ///< the plan as it is kept
  std::optional<Id<MixVersion>> mix_;
  std::optional<RetentionConstants> water_;  ///< of the mix, as the record now knows it
  std::optional<RootMassPlan> plan_;
  std::optional<Pose> dragged_;
  std::size_t chosen_ = 0;
  std::shared_ptr<const RootPlanOutcome> outcome_;
};

}  // namespace gritwright::desktop
