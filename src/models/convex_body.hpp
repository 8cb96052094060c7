#pragma once
// A convex body by its faces, cut by planes. Curved bodies come in as fine facets. Plain numbers in cm.

#include <array>
#include <cstddef>
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
  ConvexBody() = default;

  /// Adds a face by its corners in order.
  void add_face(const std::vector<Point3>& corners);

  /// What lies on the near side of the plane.
  [[nodiscard]] ConvexBody within(const HalfSpace& half) const&;
  [[nodiscard]] ConvexBody within(const HalfSpace& half) &&;

  [[nodiscard]] bool empty() const { return corners_.empty(); }
  /// Corners of all faces, each as often as faces meet there.
  [[nodiscard]] const std::vector<Point3>& corners() const { return corners_; }
  [[nodiscard]] std::vector<Point3>& corners() { return corners_; }

  /// Largest dot(direction, p). Precondition: not empty.
  [[nodiscard]] double farthest(Point3 direction) const;

  /// Calls `take(p)` for every corner of the part between two heights, without making that part.
  template <class Take>
  void corners_between(double low, double high, Take take) const {
    std::size_t begin = 0;
    for (const std::size_t end : ends_) {
      for (std::size_t i = begin; i < end; ++i) {
        const Point3& here = corners_[i];
        const Point3& next = corners_[i + 1 == end ? begin : i + 1];
        if (here.z >= low && here.z <= high) take(here);
        for (const double level : {low, high})
          if ((here.z < level) != (next.z < level) && here.z != level && next.z != level)
            take(here + (level - here.z) / (next.z - here.z) * (next - here));
      }
      begin = end;
    }
  }

 private:
  [[nodiscard]] bool all_within(const HalfSpace& half) const;
  [[nodiscard]] ConvexBody cut(const HalfSpace& half) const;

  std::vector<Point3> corners_;
  std::vector<std::size_t> ends_;  // one past the last corner of each face
};

}  // namespace gritwright
