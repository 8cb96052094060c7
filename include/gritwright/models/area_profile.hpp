#pragma once
// The inside of a container as kernels see it: horizontal area over height, piecewise polynomial, so that volumes and water
// shares can be integrated exactly.

#include <array>
#include <utility>
#include <vector>

namespace gritwright {

/// Area over height, up to the third power in each piece. Heights in cm from the floor, areas in cm2, volumes in cm3.
class AreaProfile {
 public:
  /// Area = sum of coefficients[m]·(height - from_cm)^m for from_cm <= height <= to_cm.
  struct Piece {
    double from_cm = 0;
    double to_cm = 0;
    std::array<double, 4> coefficients{};
  };

  /// Precondition: at least one piece, adjoining, rising. Throws std::logic_error otherwise.
  explicit AreaProfile(std::vector<Piece> pieces);

  /// Straight walls around 1 cm2: for a depth without a container.
  [[nodiscard]] static AreaProfile column(double height_cm);

  /// Beyond the ends the area of the end.
  [[nodiscard]] double area_cm2(double height_cm) const;

  /// Integral of the area between two heights inside the profile. Exact.
  [[nodiscard]] double volume_cm3(double from_cm, double to_cm) const;

  [[nodiscard]] AreaProfile scaled(double factor) const;

  /// The part below `height_cm`, which lies inside the profile and above its floor.
  [[nodiscard]] AreaProfile below(double height_cm) const;

  [[nodiscard]] double top_cm() const { return pieces_.back().to_cm; }
  [[nodiscard]] const std::vector<Piece>& pieces() const& { return pieces_; }
  [[nodiscard]] std::vector<Piece> pieces() && { return std::move(pieces_); }

 private:
  std::vector<Piece> pieces_;
};

/// Area through measured heights by monotone cubic interpolation (Fritsch & Butland 1984): never over- or undershoots the
/// table. Precondition: at least two heights, rising.
[[nodiscard]] AreaProfile monotone_profile(const std::vector<double>& heights_cm, const std::vector<double>& areas_cm2);

}  // namespace gritwright
