#pragma once
#include <QString>
#include <optional>
#include <vector>

#include "gritwright/domain/bag.hpp"
#include "gritwright/domain/grading.hpp"
#include "gritwright/domain/mix.hpp"
#include "gritwright/units.hpp"

namespace gritwright::desktop {

/// A test of an earlier bag of the same material.
struct EarlierTest {
  QString bag;
  QString day;
  Grading grading;
  std::optional<SizeBand> printed_size = {};  ///< on the bag
  MassShare lost{};                           ///< found nowhere, though the curve has it as finer than every sieve
  friend bool operator==(const EarlierTest&, const EarlierTest&) = default;
};

/// A kept mix that the material on screen is part of.
struct MixOfMaterial {
  QString id;
  Mix mix;
  std::size_t component = 0;
  friend bool operator==(const MixOfMaterial&, const MixOfMaterial&) = default;
};

/// What lies around the component on screen: its bag, bags of the same material before it, the sieves at hand. Read from the
/// record, so that the bench itself needs none.
struct Surroundings {
  std::optional<Bag> bag;
  std::optional<Mass> stock;            ///< dry grain left of it
  std::vector<EarlierTest> earlier;     ///< newest first, this bag's own left out
  std::vector<MixOfMaterial> mixes;     ///< newest first
  std::vector<Aperture> owned_sieves;   ///< coarse to fine; empty: not told
  bool laboratory_figures = false;
  friend bool operator==(const Surroundings&, const Surroundings&) = default;
};

}  // namespace gritwright::desktop
