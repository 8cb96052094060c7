#pragma once
// A convex body by its faces, cut by planes. Curved bodies come in as fine facets. Plain numbers in cm.

#include <cstddef>
#include <cstdint>
#include <vector>

namespace gritwright {

struct Point3 {
  double x = 0;
  double y = 0;
  double z = 0;
};

inline Point3 operator+(Point3 a, Point3 b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
inline Point3 operator-(Point3 a, Point3 b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
inline Point3 operator*(double factor, Point3 a) { return {factor * a.x, factor * a.y, factor * a.z}; }
inline double dot(Point3 a, Point3 b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
inline Point3 cross(Point3 a, Point3 b) { return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x}; }

/// Everything with dot(normal, p) <= offset.
struct HalfSpace {
  Point3 normal;
  double offset = 0;
  [[nodiscard]] double beyond(Point3 p) const { return dot(normal, p) - offset; }
};

class ConvexBody {
 public:
  using Corner = std::uint32_t;

  ConvexBody() = default;

  /// Faces that meet in a corner share it.
  Corner add_corner(const Point3& p);
  /// Adds a face by its corners in order.
  void add_face(const std::vector<Corner>& corners);

  /// What lies on the near side of the plane.
  [[nodiscard]] ConvexBody within(const HalfSpace& half) const&;
  [[nodiscard]] ConvexBody within(const HalfSpace& half) &&;

  [[nodiscard]] bool empty() const { return corners_.empty(); }
  [[nodiscard]] const std::vector<Point3>& corners() const { return corners_; }
  [[nodiscard]] std::vector<Point3>& corners() { return corners_; }

  /// Largest dot(direction, p). Precondition: not empty.
  [[nodiscard]] double farthest(Point3 direction) const;

  [[nodiscard]] double volume_cm3() const;

  /// Calls `take(p)` where an edge passes one of two heights, once for each of its faces.
  template <class Take>
  void edges_at(double low, double high, Take take) const {
    constexpr std::uint8_t under_low = 1;
    constexpr std::uint8_t under_high = 2;
    std::vector<std::uint8_t> sides(corners_.size());
    std::uint8_t all = under_low | under_high;
    std::uint8_t any = 0;
    for (std::size_t i = 0; i < sides.size(); ++i) {
      const double z = corners_[i].z;
      sides[i] = static_cast<std::uint8_t>((z < low ? under_low : 0) | (z < high ? under_high : 0));
      all &= sides[i];
      any |= sides[i];
    }
    if (all == any) return;
    std::size_t begin = 0;
    for (const std::size_t end : ends_) {
      Corner here = loops_[end - 1];
      for (std::size_t i = begin; i < end; ++i) {
        const Corner next = loops_[i];
        if (sides[here] != sides[next]) edge_at_levels(corners_[here], corners_[next], low, high, take);
        here = next;
      }
      begin = end;
    }
  }

 private:
  /// Where an edge passes a height.
  template <class Take>
  static void edge_at_levels(const Point3& here, const Point3& next, double low, double high, Take& take) {
    for (const double level : {low, high})
      if ((here.z < level) != (next.z < level) && here.z != level && next.z != level) take(here + (level - here.z) / (next.z - here.z) * (next - here));
  }

  [[nodiscard]] bool all_within(const HalfSpace& half) const;
  [[nodiscard]] ConvexBody cut(const HalfSpace& half) const;

  std::vector<Point3> corners_;
  std::vector<Corner> loops_;      // of all faces, one after the other
  std::vector<std::size_t> ends_;  // one past the last of each face in `loops_`
};

}  // namespace gritwright
