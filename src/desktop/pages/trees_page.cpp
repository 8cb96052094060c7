#include "trees_page.hpp"

#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include "pots_tab.hpp"
#include "trees_tab.hpp"
#include "widgets/record_list_side.hpp"

namespace gritwright::desktop {

TreesPage::TreesPage(RecordBook& book, QWidget* parent)
    : QWidget(parent), tabs_(new QTabWidget(this)), trees_(new TreesTab(book, tabs_)), pots_(new PotsTab(book, tabs_)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 8, 8, 8);
  tabs_->setObjectName(QStringLiteral("trees_tabs"));
  tabs_->setAccessibleName(tr("Pots and trees"));
  tabs_->setDocumentMode(true);
  tabs_->tabBar()->setMinimumHeight(32);
  tabs_->addTab(trees_, tr("Trees"));
  tabs_->addTab(pots_, tr("Pots"));
  layout->addWidget(tabs_);
}

void TreesPage::set_units(UnitSystem units) {
  trees_->set_units(units);
  pots_->set_units(units);
}

void TreesPage::show_trees() { tabs_->setCurrentWidget(trees_); }
void TreesPage::show_pots() { tabs_->setCurrentWidget(pots_); }

void TreesPage::find() {
  if (tabs_->currentWidget() == pots_) pots_->list().find();
  else {
    show_trees();
    trees_->list().find();
  }
}

}  // namespace gritwright::desktop
