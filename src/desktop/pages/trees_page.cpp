#include "trees_page.hpp"

#include <QTabWidget>
#include <QVBoxLayout>

#include "pots_tab.hpp"
#include "root_plan_tab.hpp"
#include "trees_tab.hpp"
#include "widgets/record_list_side.hpp"

namespace gritwright::desktop {

TreesPage::TreesPage(RecordBook& book, const Catalogue& catalogue, QWidget* parent)
    : QWidget(parent), tabs_(new QTabWidget(this)), trees_(new TreesTab(book, catalogue, tabs_)), pots_(new PotsTab(book, tabs_)), plans_(new RootPlanTab(book, catalogue, tabs_)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 8, 8, 8);
  tabs_->setObjectName(QStringLiteral("trees_tabs"));
  tabs_->setAccessibleName(tr("Pots and trees"));
  tabs_->setDocumentMode(true);
  tabs_->addTab(trees_, tr("Trees"));
  tabs_->addTab(pots_, tr("Pots"));
  tabs_->addTab(plans_, tr("Root-mass plans"));
  layout->addWidget(tabs_);
  connect(trees_, &TreesTab::plan_wanted, this, [this](const QString& tree) {
    show_plans();
    plans_->plan_tree(tree);
  });
}

void TreesPage::set_units(UnitSystem units) {
  trees_->set_units(units);
  pots_->set_units(units);
  plans_->set_units(units);
}

void TreesPage::show_trees() { tabs_->setCurrentWidget(trees_); }
void TreesPage::show_pots() { tabs_->setCurrentWidget(pots_); }
void TreesPage::show_plans() { tabs_->setCurrentWidget(plans_); }

void TreesPage::find() {
  if (tabs_->currentWidget() == pots_) pots_->list().find();
  else if (tabs_->currentWidget() == plans_) plans_->list().find();
  else {
    show_trees();
    trees_->list().find();
  }
}

}  // namespace gritwright::desktop
