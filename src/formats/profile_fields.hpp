#pragma once
// A wish as a record keeps it: which figure, then what belongs to that figure.

#include <variant>

#include "grain_fields.hpp"
#include "gritwright/domain/species_profile.hpp"

namespace gritwright::fields {

/// All that any wish may say, in one row.
struct WrittenWish {
  enum class Figure { limits, nearest, band, finer, air, water, available, wet_mass, exchange, price, share };

  Figure figure = Figure::band;
  PassingLimits limits;
  NearestGrading nearest;
  std::optional<Aperture> from;
  std::optional<Aperture> to;
  std::string name;  ///< of a pot or of what a share is of
  std::optional<double> least;
  std::optional<double> most;
  bool hard = false;
  double weight = 1;
};

inline constexpr std::array wish_words{Word<WrittenWish::Figure>{WrittenWish::Figure::limits, "limits"},
                                       Word<WrittenWish::Figure>{WrittenWish::Figure::nearest, "nearest"},
                                       Word<WrittenWish::Figure>{WrittenWish::Figure::band, "band"},
                                       Word<WrittenWish::Figure>{WrittenWish::Figure::finer, "finer"},
                                       Word<WrittenWish::Figure>{WrittenWish::Figure::air, "air-filled-porosity"},
                                       Word<WrittenWish::Figure>{WrittenWish::Figure::water, "container-capacity"},
                                       Word<WrittenWish::Figure>{WrittenWish::Figure::available, "available-in-pot"},
                                       Word<WrittenWish::Figure>{WrittenWish::Figure::wet_mass, "wet-mass"},
                                       Word<WrittenWish::Figure>{WrittenWish::Figure::exchange, "exchange-capacity"},
                                       Word<WrittenWish::Figure>{WrittenWish::Figure::price, "price"},
                                       Word<WrittenWish::Figure>{WrittenWish::Figure::share, "share"}};

[[nodiscard]] inline WrittenWish written_wish(const Wish& wish) {
  using Figure = WrittenWish::Figure;
  WrittenWish written;
  written.least = wish.least;
  written.most = wish.most;
  written.hard = wish.hard;
  written.weight = wish.weight;
  struct {
    WrittenWish& row;
    void operator()(const PassingLimits& limits) const { row.figure = Figure::limits, row.limits = limits; }
    void operator()(const NearestGrading& grading) const { row.figure = Figure::nearest, row.nearest = grading; }
    void operator()(const BandShare& band) const { row.figure = Figure::band, row.from = band.from, row.to = band.to; }
    void operator()(const FinerShare& finer) const { row.figure = Figure::finer, row.to = finer.size; }
    void operator()(const ExchangeCapacity&) const { row.figure = Figure::exchange; }
    void operator()(const MixPrice&) const { row.figure = Figure::price; }
    void operator()(const ShareOf& share) const { row.figure = Figure::share, row.name = share.name; }
    void operator()(const FigureInPot& in_pot) const {
      row.name = in_pot.pot;
      switch (in_pot.figure) {
        case PotFigure::air_filled_porosity: row.figure = Figure::air; break;
        case PotFigure::container_capacity: row.figure = Figure::water; break;
        case PotFigure::available_in_pot: row.figure = Figure::available; break;
        case PotFigure::wet_mass: row.figure = Figure::wet_mass; break;
      }
    }
  } write{written};
  std::visit(write, wish.figure);
  return written;
}

[[nodiscard]] inline WishFigure figure_of(const WrittenWish& row) {
  using Figure = WrittenWish::Figure;
  const auto in_pot = [&](PotFigure figure) -> WishFigure { return FigureInPot{figure, row.name}; };
  switch (row.figure) {
    case Figure::limits: return row.limits;
    case Figure::nearest: return row.nearest;
    case Figure::band: return BandShare{row.from.value_or(Aperture{}), row.to.value_or(Aperture{})};
    case Figure::finer: return FinerShare{row.to.value_or(Aperture{})};
    case Figure::air: return in_pot(PotFigure::air_filled_porosity);
    case Figure::water: return in_pot(PotFigure::container_capacity);
    case Figure::available: return in_pot(PotFigure::available_in_pot);
    case Figure::wet_mass: return in_pot(PotFigure::wet_mass);
    case Figure::exchange: return ExchangeCapacity{};
    case Figure::price: return MixPrice{};
    case Figure::share: return ShareOf{row.name};
  }
  return BandShare{};
}

inline constexpr Door<Passing> passing_door{passing_percent, [](Passing value) { return in_percent(value); }};

struct PassingLimitFields {
  template <class Io, class T>
  void operator()(Io& io, T& limit) const {
    io.required_number("aperture_mm", limit.aperture, mm);
    io.number("low", limit.low, passing_door);
    io.number("high", limit.high, passing_door);
  }
};
struct NearestPointFields {
  template <class Io, class T>
  void operator()(Io& io, T& point) const {
    io.required_number("aperture_mm", point.aperture, mm);
    io.required_number("passing", point.passing, passing_door);
  }
};
struct WishFields {
  template <class Io, class T>
  void operator()(Io& io, T& wish) const {
    WrittenWish row;
    if constexpr (!Io::reading) row = written_wish(wish);
    io.word("figure", row.figure, wish_words);
    io.list("limits", row.limits.limits, PassingLimitFields{});
    io.list("nearest", row.nearest.points, NearestPointFields{});
    io.number("from_mm", row.from, mm);
    io.number("to_mm", row.to, mm);
    io.text("name", row.name);
    io.number("least", row.least, plain);
    io.number("most", row.most, plain);
    io.flag("hard", row.hard);
    io.number("weight", row.weight, plain, 1.0);
    if constexpr (Io::reading) wish = Wish{figure_of(row), row.least, row.most, row.hard, row.weight};
  }
};
struct StartingPartFields {
  template <class Io, class T>
  void operator()(Io& io, T& part) const {
    io.required_text("material", part.material);
    io.required_number("parts", part.parts, ratio<Parts>);
  }
};

}  // namespace gritwright::fields
