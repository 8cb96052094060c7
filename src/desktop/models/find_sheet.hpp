#pragma once
// What was asked of a search for parts, as it was typed.

#include <QString>
#include <array>
#include <cstddef>
#include <vector>

namespace gritwright::desktop {

/// The wishes a grower can type, in the order they are shown.
enum class WishRow { band, finer, air, water, available, wet_mass, exchange, price, limits, nearest };
inline constexpr std::size_t wish_rows = 10;

struct WishText {
  QString least;  ///< of a grading: its points, "4.75 90-100; 2.36 34-50"
  QString most;
  bool hard = false;
  QString weight;  ///< empty: 1
  friend bool operator==(const WishText&, const WishText&) = default;
};

/// What was typed over what the shelf says of one candidate; an empty text leaves the shelf's figure standing.
struct CandidateText {
  enum class Use { by_shelf, taken, left_out };

  QString key;
  Use use = Use::by_shelf;
  QString stock;
  QString price;
  QString least_share;  ///< percent of the loose volume, a hard wish
  QString most_share;
  friend bool operator==(const CandidateText&, const CandidateText&) = default;
};

/// The wanted grain that a group brought along, and the one that stood there before it. Empty texts: none.
struct BorrowedBand {
  QString from;
  QString to;
  QString from_before;
  QString to_before;
  friend bool operator==(const BorrowedBand&, const BorrowedBand&) = default;
};

struct FindSheet {
  QString profile;   ///< name of the group's profile the wishes started from; may be empty
  std::vector<QString> also_pots;  ///< ids of further pots of the record that air and water are asked of
  QString dust_size;
  std::array<WishText, wish_rows> wishes;
  std::vector<CandidateText> candidates;  ///< only those something was typed for
  QString need;
  QString components = QStringLiteral("4");
  QString total = QStringLiteral("12");
  bool whole = true;
  BorrowedBand band;
  friend bool operator==(const FindSheet&, const FindSheet&) = default;

  [[nodiscard]] WishText& wish(WishRow row) { return wishes[static_cast<std::size_t>(row)]; }
  [[nodiscard]] const WishText& wish(WishRow row) const { return wishes[static_cast<std::size_t>(row)]; }
  [[nodiscard]] const CandidateText* candidate(const QString& key) const {
    for (const CandidateText& one : candidates)
      if (one.key == key) return &one;
    return nullptr;
  }
  /// The texts of `key`, made where there are none.
  [[nodiscard]] CandidateText& candidate_to_change(const QString& key) {
    for (CandidateText& one : candidates)
      if (one.key == key) return one;
    candidates.push_back({});
    candidates.back().key = key;
    return candidates.back();
  }
};

}  // namespace gritwright::desktop
