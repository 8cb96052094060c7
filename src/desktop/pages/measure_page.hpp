#pragma once
#include <QWidget>

#include "gritwright/domain/material.hpp"
#include "models/protocols.hpp"
#include "models/record_book.hpp"

class QComboBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace gritwright::desktop {

class FigurePanel;
class ProtocolDrawing;
class RecordForm;

/// Guided measurements: how it is done, a form, what follows, and one button that keeps it with its bag or mix.
class MeasurePage : public QWidget {
  Q_OBJECT
 public:
  MeasurePage(RecordBook& book, const Catalogue& catalogue, QWidget* parent = nullptr);

  /// Chooses a measurement and what is measured; an empty number leaves the newest.
  void show_protocol(Protocol protocol, const QString& subject = {});
  void set_units(UnitSystem units);
  /// Keeps what was measured; told and false while it is not complete.
  bool keep();
  [[nodiscard]] const ProtocolSheet& sheet() const { return sheet_; }

 signals:
  /// A figure of that bag or mix was kept.
  void kept(const QString& subject);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* asked_side();
  QWidget* answer_side();
  void fill_subjects(const QString& wanted);
  void fill_pots();
  void subject_chosen();
  void build_form();
  void refresh();
  [[nodiscard]] QString draft_key(const QString& field) const;

  RecordBook& book_;
  const Catalogue& catalogue_;
  UnitSystem units_ = UnitSystem::metric;
  ProtocolSheet sheet_;
  QString built_for_;
  QString kept_text_;  ///< what was kept last, until something else is typed
  QComboBox* protocol_ = nullptr;
  QComboBox* subject_ = nullptr;
  QComboBox* pot_ = nullptr;
  QLabel* subject_label_ = nullptr;
  QLabel* pot_label_ = nullptr;
  QLabel* purpose_ = nullptr;
  QLabel* steps_ = nullptr;
  ProtocolDrawing* drawing_ = nullptr;
  QVBoxLayout* form_place_ = nullptr;
  RecordForm* form_ = nullptr;
  FigurePanel* figures_ = nullptr;
  QLabel* state_ = nullptr;
  QLabel* questions_ = nullptr;
  QPushButton* keep_ = nullptr;
};

}  // namespace gritwright::desktop
