#pragma once
#include <initializer_list>

class QWidget;

namespace gritwright::desktop {

/// Makes Tab go through what lies in these widgets, one after the other, in the order in which it is read: as it is laid out, line by line
/// and column by column. Qt goes by when a widget was made, which for rows that come and go is any order.
void tab_in_reading_order(std::initializer_list<QWidget*> parts);

}  // namespace gritwright::desktop
