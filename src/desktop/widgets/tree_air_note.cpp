#include "tree_air_note.hpp"

#include "gritwright/models/slice_threads.hpp"


namespace gritwright::desktop {

TreeAirNote::TreeAirNote(RecordBook& book, const Catalogue& catalogue, QWidget* parent) : QLabel(parent), book_(book), catalogue_(catalogue) {
  setObjectName(QStringLiteral("tree_air_text"));
  setWordWrap(true);
  hide();
}

void TreeAirNote::show_tree(const Tree& tree) {
  const Repotting* const last = stands_in(tree);
  auto question = last != nullptr ? ageing_question(book_.workbook(), catalogue_, *last, book_.calibrations()) : std::nullopt;
  if (question == asked_ && (last == nullptr || last->day == day_)) return;
  asked_ = std::move(question);
  day_ = last != nullptr ? last->day : std::string();
  job_.cancel();
  hide();
  if (!asked_) return;
  job_.start([this, asked = *asked_, repotting = *last](const std::stop_token& stop, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    const auto ageing = ageing_of(asked, catalogue_, on_all_cores(), stop);
    if (!ageing) return {};
    return [this, text = tree_air_sentence(repotting, *ageing)] {
      setText(text);
      show();
    };
  });
}

}  // namespace gritwright::desktop
