#pragma once
#include <optional>
#include <vector>

#include "gritwright/models/lot_control.hpp"
#include "surroundings.hpp"

namespace gritwright::desktop {

/// Figures of the bags before the one on screen, worked out again only where they, the band or the grain are others: while a sieve test is typed into only its own figures change.
class EarlierLots {
 public:
  /// In the order of `earlier`; valid until the next call.
  const std::vector<LotFigures>& figures(const std::vector<EarlierTest>& earlier, const Band& band, const std::optional<GrainProperties>& grain);

 private:
  std::vector<EarlierTest> earlier_;
  std::optional<Band> band_;
  std::optional<GrainProperties> grain_;
  std::vector<LotFigures> figures_;
};

}  // namespace gritwright::desktop
