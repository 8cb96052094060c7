#pragma once
#include <QScrollArea>
#include <vector>

#include "gritwright/report/print_document.hpp"

class QVBoxLayout;

namespace gritwright::desktop {

/// Sections of a sheet on screen: each table as a table that can be walked and read out, texts as lines.
class SectionView : public QScrollArea {
  Q_OBJECT
 public:
  /// `object_name` is this view's; its tables are "OBJECT_NAME_table_0" and on.
  SectionView(const QString& object_name, const QString& title, QWidget* parent = nullptr);

  /// Drawings are left out. Shows `instead` where there is nothing.
  void show_sections(const std::vector<PrintSection>& sections, const QString& instead = {});

  /// No narrower than the longest word.
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void rebuild();
  void add_table(const QString& title, const PrintTable& table);

  QString title_;
  QWidget* content_;
  QVBoxLayout* layout_;
  std::vector<PrintSection> sections_;
  QString instead_;
  QString shown_;
  int tables_ = 0;
};

}  // namespace gritwright::desktop
