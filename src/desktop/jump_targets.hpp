#pragma once
#include "models/bench.hpp"
#include "widgets/jump_box.hpp"

namespace gritwright::desktop {

class MainWindow;
class RecordBook;

/// What fits the words: records whose number begins so first, then other records, sheets on the bench, actions. `record` may be null.
[[nodiscard]] std::vector<JumpBox::Target> jump_targets(MainWindow& window, Bench& bench, const RecordBook* record, const QString& words);

}  // namespace gritwright::desktop
