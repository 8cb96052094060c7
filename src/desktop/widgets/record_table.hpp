#pragma once

class QTableView;

namespace gritwright::desktop {

/// How a list of records looks and behaves: whole rows, nothing edited in place, Tab leaves it, column 1 takes the room that is left.
void show_as_record_list(QTableView& table);

/// A second line for headings that are wider than their columns.
void give_headings_room(QTableView& table);

}  // namespace gritwright::desktop
