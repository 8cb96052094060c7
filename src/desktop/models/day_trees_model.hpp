#pragma once
#include <QAbstractTableModel>
#include <QString>
#include <vector>

namespace gritwright::desktop {

/// One tree of a repotting day as its line shows it.
struct DayLine {
  QString id;  ///< of the tree, which stands once on a day
  bool done = false;
  QString tree;
  QString mix;
  QString pot;
  QString plan;
  QString in_pot;
  QString pour;
  QString scoops;
  QString used;
  QString buds;
  QString helper;
  QString note;
  QString fault;  ///< why the tree is not added up; empty where it is
  friend bool operator==(const DayLine&, const DayLine&) = default;
};

/// The trees of a day in working order, and the evening's table: done, plan, litres and note are written into it.
class DayTreesModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { done, tree, mix, pot, plan, in_pot, pour, scoops, used, buds, helper, note, columns };

  explicit DayTreesModel(QObject* parent = nullptr) : QAbstractTableModel(parent) {}

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  Qt::ItemFlags flags(const QModelIndex& index) const override;

  void set_lines(std::vector<DayLine> lines);
  [[nodiscard]] const std::vector<DayLine>& lines() const { return lines_; }
  /// Where the tree of that id stands; -1 where it does not.
  [[nodiscard]] int line_of(const QString& id) const;

 signals:
  void ticked(const QString& id, bool done);
  void written(const QString& id, int column, const QString& text);

 private:
  [[nodiscard]] static QString text_of(const DayLine& line, int column);

  std::vector<DayLine> lines_;
};

}  // namespace gritwright::desktop
