#include "window_memory.hpp"

#include <QHeaderView>
#include <QMainWindow>
#include <QSettings>
#include <QSplitter>
#include <QTableView>

#include "widgets/folding_sides.hpp"

namespace gritwright::desktop {

namespace {

QString key_of(const QObject& thing) { return QStringLiteral("layout/") + thing.objectName(); }

/// Lists of the record keep their columns; tables that fit themselves to what they show do not.
bool keeps_columns(const QTableView& table) { return table.objectName() == QStringLiteral("bags_table") || table.objectName() == QStringLiteral("log_table"); }

}  // namespace

void remember_layout(const QMainWindow& window) {
  QSettings settings;
  for (const QSplitter* splitter : window.findChildren<QSplitter*>()) {
    if (!splitter->objectName().isEmpty() && !is_part_of_folded(*splitter)) settings.setValue(key_of(*splitter), splitter->saveState());
  }
  for (const QTableView* table : window.findChildren<QTableView*>()) {
    // Broken into lines it is as large text or a narrow window make it.
    if (keeps_columns(*table) && !table->wordWrap()) settings.setValue(key_of(*table), table->horizontalHeader()->saveState());
  }
}

void restore_layout(QMainWindow& window) {
  const QSettings settings;
  for (QSplitter* splitter : window.findChildren<QSplitter*>()) {
    if (settings.contains(key_of(*splitter))) splitter->restoreState(settings.value(key_of(*splitter)).toByteArray());
  }
  for (QTableView* table : window.findChildren<QTableView*>()) {
    if (keeps_columns(*table) && settings.contains(key_of(*table))) table->horizontalHeader()->restoreState(settings.value(key_of(*table)).toByteArray());
  }
}

}  // namespace gritwright::desktop
