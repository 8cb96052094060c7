#pragma once

class QFontMetrics;
class QTableView;

namespace gritwright::desktop {

/// How a list of records looks and behaves: whole rows, nothing edited in place, Tab leaves it, column 1 takes the room that is left.
void show_as_record_list(QTableView& table);

/// How much wider than its words a column is at least, so that they stand apart from those of the next one.
[[nodiscard]] int room_beside_words(const QFontMetrics& metrics);

/// So much of it is in a cell's own size hint.
inline constexpr int beside_words_of_cells = 6;

/// Of the wider of its two lines, if it can be broken.
[[nodiscard]] int width_of_heading(const QTableView& table, int column);

/// Spreads some of the `room` that is left over to all columns but the first, which takes the rest: figures would stand crowded at its side.
void give_air_beside_first(QTableView& table, int room);

/// A second line for headings that are wider than their columns.
void give_headings_room(QTableView& table);

}  // namespace gritwright::desktop
