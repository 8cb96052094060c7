#include "window_memory.hpp"

#include <QList>
#include <QMainWindow>
#include <QObject>
#include <QSettings>
#include <QSplitter>
#include <QString>
#include <QTableView>
#include <QVariant>

#include "widgets/folding_sides.hpp"
#include "widgets/list_fit.hpp"

namespace gritwright::desktop {

namespace {

QString key_of(const QObject& thing) { return QStringLiteral("layout/") + thing.objectName(); }
QString columns_key_of(const QObject& table) { return QStringLiteral("columns/") + table.objectName(); }

/// Of a list of the record, which keeps the columns that were dragged; null for tables that fit themselves to what they show.
ListFit* kept_columns(const QTableView& table) { return table.objectName().isEmpty() ? nullptr : table.findChild<ListFit*>(QString(), Qt::FindDirectChildrenOnly); }

}  // namespace

void remember_layout(const QMainWindow& window) {
  QSettings settings;
  for (const QSplitter* splitter : window.findChildren<QSplitter*>()) {
    if (!splitter->objectName().isEmpty() && !is_part_of_folded(*splitter)) settings.setValue(key_of(*splitter), splitter->saveState());
  }
  for (const QTableView* table : window.findChildren<QTableView*>()) {
    if (ListFit* fit = kept_columns(*table)) {
      QVariantList widths;
      for (const int width : fit->dragged()) widths << width;
      settings.setValue(columns_key_of(*table), widths);
    }
  }
}

void restore_layout(QMainWindow& window) {
  const QSettings settings;
  for (QSplitter* splitter : window.findChildren<QSplitter*>()) {
    if (settings.contains(key_of(*splitter))) splitter->restoreState(settings.value(key_of(*splitter)).toByteArray());
  }
  for (QTableView* table : window.findChildren<QTableView*>()) {
    if (ListFit* fit = kept_columns(*table)) {
      QList<int> widths;
      for (const QVariant& width : settings.value(columns_key_of(*table)).toList()) widths << width.toInt();
      fit->bring_back(widths);
    }
  }
}

}  // namespace gritwright::desktop
