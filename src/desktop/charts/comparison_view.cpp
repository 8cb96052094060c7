#include "comparison_view.hpp"

#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <vector>

#include "curve_look.hpp"
#include "gritwright/models/slice_threads.hpp"
#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

/// Small multiples: every mix on the same axes, so that eyes compare shapes and not scales.
class ComparisonPicture : public QWidget {
 public:
  explicit ComparisonPicture(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("comparison_picture"));
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(ComparisonView::tr("Mixes side by side"));
    setBackgroundRole(QPalette::Base);
    setAutoFillBackground(true);
  }

  void show_comparison(const Comparison& comparison, const QString& sentence) {
    comparison_ = comparison;
    setAccessibleDescription(sentence);
    least_mm_ = 1e9;
    most_mm_ = 0;
    for (const ComparedMix& mix : comparison_.mixes) {
      for (const GradingPoint& point : mix.grading.points) {
        least_mm_ = std::min(least_mm_, in_mm(point.aperture));
        most_mm_ = std::max(most_mm_, in_mm(point.aperture));
      }
    }
    fit();
    update();
  }

  /// For the room there is.
  void fit() {
    lies_ = false;
    const double least_height = 12.0 * fontMetrics().height();
    columns_ = most_columns();
    cell_height_ = least_height;
    if (parentWidget() == nullptr) return;
    const double room = parentWidget()->height() - key_height();
    if (row_count() > 1 && 2 * least_height > room) {
      lies_ = true;
      columns_ = most_columns();
      // The name above them, the bar beside the curve and what is around all.
      cell_height_ = 2 * fontMetrics().height() + words_height() + 18;
      setMinimumHeight(static_cast<int>(std::ceil(key_height() + row_count() * cell_height_)));
      return;
    }
    // Wider, in more rows, as long as all are in sight.
    while (columns_ > 1 && rows_of(columns_ - 1) * least_height <= room) --columns_;
    constexpr double most_grown = 2;
    cell_height_ = std::clamp(room / std::max(1, row_count()), least_height, most_grown * least_height);
    setMinimumHeight(static_cast<int>(std::ceil(key_height() + std::max(1, row_count()) * least_height)));
  }

 protected:
  void resizeEvent(QResizeEvent* event) override {
    QWidget::resizeEvent(event);
    fit();
  }

  void changeEvent(QEvent* event) override {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) fit();
  }

  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (comparison_.mixes.empty()) {
      painter.setPen(current_colours().muted);
      painter.drawText(QRectF(rect()).adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap, accessibleDescription());
      return;
    }
    paint_key(painter);
    const double top = key_height();
    const int columns = columns_;
    const double cell_width = width() / static_cast<double>(columns);
    for (std::size_t i = 0; i < comparison_.mixes.size(); ++i) {
      const int at = static_cast<int>(i);
      const int column = layoutDirection() == Qt::RightToLeft ? columns - 1 - at % columns : at % columns;
      const int row = at / columns;
      paint_mix(painter, comparison_.mixes[i], QRectF(column * cell_width, top + row * cell_height_, cell_width, cell_height_));
    }
  }

 private:
  // Where not even two rows of upright cells would be in sight each mix lies, its curve beside its figures.
  [[nodiscard]] int signs_wide() const { return lies_ ? 40 : 24; }
  [[nodiscard]] int most_columns() const {
    return std::clamp(width() / (signs_wide() * std::max(1, fontMetrics().averageCharWidth())), 1, std::max(1, static_cast<int>(comparison_.mixes.size())));
  }
  [[nodiscard]] int rows_of(int columns) const { return (static_cast<int>(comparison_.mixes.size()) + columns - 1) / columns; }
  [[nodiscard]] int row_count() const { return rows_of(columns_); }

  /// Of what stands beside a curve that lies. By what is painted: signs of a fallback font are higher than the font's own.
  [[nodiscard]] double words_height() const {
    double height = 0;
    const double room = words_share * (width() / static_cast<double>(columns_) - 2 * around);
    const QFontMetricsF metrics(font());
    for (const ComparedMix& mix : comparison_.mixes) height = std::max(height, metrics.boundingRect(QRectF(0, 0, room, 10000), Qt::AlignLeading | Qt::AlignTop | Qt::TextWordWrap, words_of(mix)).height());
    return height;
  }

  struct KeyEntry {
    QString name;
    QBrush fill;
    QRectF swatch;
  };

  /// What the bars and the shade say, above all mixes, in as many lines as it needs.
  [[nodiscard]] std::vector<KeyEntry> key() const {
    if (comparison_.mixes.empty()) return {};
    const ThemeColours& colours = current_colours();
    std::vector<KeyEntry> entries;
    if (std::ranges::any_of(comparison_.mixes, [](const ComparedMix& mix) { return mix.air && mix.water; }))
      entries = {{ComparisonView::tr("water"), colours.curves[0].colour, {}},
                 {ComparisonView::tr("air"), QBrush(colours.curves[1].colour, Qt::BDiagPattern), {}},
                 {ComparisonView::tr("grain and trapped air"), Qt::NoBrush, {}}};
    if (comparison_.band) entries.push_back({ComparisonView::tr("wanted grain"), colours.band, {}});
    const QFontMetricsF metrics(font());
    QPointF at(around, 4);
    for (KeyEntry& entry : entries) {
      const double taken = swatch_wide + 6 + metrics.horizontalAdvance(entry.name);
      if (at.x() > around && at.x() + taken > width()) at = QPointF(around, at.y() + metrics.height() + 2);
      entry.swatch = QRectF(at.x(), at.y() + 0.15 * metrics.height(), swatch_wide, 0.7 * metrics.height());
      at.rx() += taken + 2 * around;
    }
    return entries;
  }

  [[nodiscard]] double key_height() const {
    const std::vector<KeyEntry> entries = key();
    return entries.empty() ? 0 : entries.back().swatch.bottom() + 4;
  }

  void paint_key(QPainter& painter) const {
    const ThemeColours& colours = current_colours();
    const double line = QFontMetricsF(font()).height();
    for (const KeyEntry& entry : key()) {
      const bool mirrored = layoutDirection() == Qt::RightToLeft;
      const QRectF swatch = mirrored ? QRectF(width() - entry.swatch.right(), entry.swatch.top(), swatch_wide, entry.swatch.height()) : entry.swatch;
      painter.setPen(QPen(colours.field_edge, 1));
      painter.setBrush(entry.fill);
      painter.drawRect(swatch);
      painter.setPen(colours.palette.color(QPalette::Text));
      const QRectF room = mirrored ? QRectF(0, swatch.center().y() - line, swatch.left() - 6, 2 * line) : QRectF(swatch.right() + 6, swatch.center().y() - line, width(), 2 * line);
      painter.drawText(room, Qt::AlignLeading | Qt::AlignVCenter | Qt::TextSingleLine, entry.name);
    }
  }

  [[nodiscard]] static QString words_of(const ComparedMix& mix) {
    const auto percent = [](const std::optional<Porosity>& share) { return to_local(percent_text(share ? std::optional(share->value()) : std::nullopt, 0)); };
    // A range is not broken at the end of a line.
    const auto with_range = [](const QString& middle, const std::optional<Range>& range) {
      return range ? ComparisonView::tr("%1 (%2)").arg(middle, share_range_text(*range, 0).replace(u' ', QChar::Nbsp).replace(QStringLiteral("\u2013"), QStringLiteral("\u2013\u2060"))) : middle;
    };
    QString figures = ComparisonView::tr("air %1, water %2").arg(with_range(percent(mix.air), mix.air_range), with_range(percent(mix.water), mix.water_range));
    if (mix.pot_tests.isEmpty()) return figures;
    return (mix.tested_itself ? ComparisonView::tr("%1; by pot test %2") : ComparisonView::tr("%1; leaning on pot test %2")).arg(figures, mix.pot_tests);
  }

  void paint_mix(QPainter& painter, const ComparedMix& mix, const QRectF& cell) const {
    const ThemeColours& colours = current_colours();
    const double line = QFontMetricsF(font()).height();
    const QRectF inside = cell.adjusted(around, 6, -around, -6);
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    painter.setPen(colours.palette.color(QPalette::Text));
    painter.drawText(QRectF(inside.left(), inside.top(), inside.width(), line), Qt::AlignLeading | Qt::AlignVCenter,
                     QFontMetricsF(bold).elidedText(mix.name, Qt::ElideMiddle, inside.width()));
    painter.setFont(font());
    const double top = inside.top() + line + 4;
    const double words_wide = words_share * inside.width();
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    const QRectF plot = lies_ ? QRectF(mirrored ? inside.left() + words_wide + around : inside.left(), top, inside.width() - words_wide - around, inside.bottom() - top)
                              : QRectF(inside.left(), top, inside.width(), inside.height() - 5 * line - 12);
    const QRectF bar = lies_ ? QRectF(mirrored ? inside.left() : inside.right() - words_wide, top, words_wide, line * 0.8) : QRectF(inside.left(), plot.bottom() + 6, inside.width(), line * 0.8);
    paint_curve(painter, mix, plot);
    paint_bar(painter, mix, bar);
    painter.setPen(colours.palette.color(QPalette::Text));
    painter.drawText(QRectF(bar.left(), bar.bottom() + 2, bar.width(), cell.bottom() - bar.bottom()), Qt::AlignLeading | Qt::AlignTop | Qt::TextWordWrap, words_of(mix));
  }

  void paint_curve(QPainter& painter, const ComparedMix& mix, const QRectF& plot) const {
    const ThemeColours& colours = current_colours();
    const auto x_of = [&](double mm) { return plot.left() + plot.width() * std::log(mm / least_mm_) / std::log(most_mm_ / least_mm_); };
    if (most_mm_ > least_mm_ && comparison_.band) {
      const double from = in_mm(comparison_.band->from) > least_mm_ ? x_of(in_mm(comparison_.band->from)) : plot.left();
      const double to = std::min(plot.right(), x_of(in_mm(comparison_.band->to)));
      if (to > from) painter.fillRect(QRectF(QPointF(from, plot.top()), QPointF(to, plot.bottom())), colours.band);
    }
    painter.setPen(QPen(colours.grid, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(plot);
    if (most_mm_ <= least_mm_) return;
    QPolygonF curve;
    for (const GradingPoint& point : mix.grading.points) curve << QPointF(x_of(in_mm(point.aperture)), plot.bottom() - plot.height() * point.passing.value());
    painter.setPen(QPen(mix.id.isEmpty() ? colours.blend : colours.curves[0].colour, mix.id.isEmpty() ? 3 : 2));
    painter.drawPolyline(curve);
  }

  void paint_bar(QPainter& painter, const ComparedMix& mix, const QRectF& bar) const {
    const ThemeColours& colours = current_colours();
    painter.setPen(QPen(colours.field_edge, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(bar);
    if (!mix.air || !mix.water) return;
    // Water is filled, air hatched, the rest is grain: told apart without colour too.
    const double water = bar.width() * mix.water->value();
    const double air = bar.width() * mix.air->value();
    painter.fillRect(QRectF(bar.left(), bar.top(), water, bar.height()), colours.curves[0].colour);
    painter.fillRect(QRectF(bar.left() + water, bar.top(), air, bar.height()), QBrush(colours.curves[1].colour, Qt::BDiagPattern));
    painter.drawLine(QPointF(bar.left() + water + air, bar.top()), QPointF(bar.left() + water + air, bar.bottom()));
  }

  static constexpr int around = 8;
  static constexpr double words_share = 0.6;
  static constexpr double swatch_wide = 24;

  Comparison comparison_;
  double least_mm_ = 1;
  double most_mm_ = 1;
  bool lies_ = false;
  int columns_ = 1;
  double cell_height_ = 0;
};

ComparisonView::ComparisonView(Bench& bench, QWidget* parent)
    : QWidget(parent),
      bench_(bench),
      picture_(new ComparisonPicture(nullptr)),
      working_(new QWidget(this)),
      progress_(new QProgressBar(working_)),
      job_(new BackgroundJob(this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* area = new QScrollArea(this);
  area->setWidget(picture_);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setFocusPolicy(Qt::NoFocus);
  layout->addWidget(area, 1);
  setFocusProxy(picture_);
  auto* row = new QHBoxLayout(working_);
  row->setContentsMargins(6, 0, 6, 4);
  progress_->setObjectName(QStringLiteral("comparison_progress"));
  progress_->setAccessibleName(tr("Mixes compared"));
  auto* cancel = new QPushButton(tr("Cancel"), working_);
  cancel->setObjectName(QStringLiteral("comparison_cancel"));
  cancel->setAccessibleName(tr("Stop comparing"));
  cancel->setMinimumHeight(26);
  row->addWidget(progress_, 1);
  row->addWidget(cancel);
  working_->hide();
  layout->addWidget(working_);
  connect(cancel, &QPushButton::clicked, job_, &BackgroundJob::cancel);
  connect(job_, &BackgroundJob::running_changed, working_, &QWidget::setVisible);
  connect(job_, &BackgroundJob::progressed, this, [this](int done, int of) {
    progress_->setMaximum(of);
    progress_->setValue(done);
  });
  connect(&bench_, &Bench::changed, this, &ComparisonView::start);
}

void ComparisonView::set_kept(std::function<std::vector<KeptMix>()> read) {
  read_kept_ = std::move(read);
  forget_kept();
}

void ComparisonView::forget_kept() {
  kept_.reset();
  start();
}

QWidget& ComparisonView::picture() { return *picture_; }

void ComparisonView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  start();
}

void ComparisonView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  picture_->fit();
}

void ComparisonView::start() {
  if (!isVisible()) return;
  const BenchEvaluation& evaluation = bench_.evaluation();
  if (!kept_) kept_ = read_kept_ ? read_kept_() : std::vector<KeptMix>{};
  std::vector<KeptMix> mixes = *kept_;
  if (auto question = mix_question(bench_)) mixes.insert(mixes.begin(), KeptMix{QString(), tr("on the bench"), std::move(*question)});
  std::shared_ptr<const PotGeometry> pot;
  if (evaluation.pot) pot = std::make_shared<const PotGeometry>(*evaluation.pot);
  job_->start([this, mixes = std::move(mixes), pot, band = evaluation.band, &catalogue = bench_.catalogue()](const std::stop_token& stop, const BackgroundJob::Progress& progress) -> BackgroundJob::Delivery {
    auto answer = std::make_shared<Comparison>(gritwright::desktop::compared(mixes, pot.get(), band, catalogue, on_all_cores(), stop, progress));
    return [this, answer] {
      comparison_ = *answer;
      picture_->show_comparison(comparison_, comparison_sentence(comparison_, bench_.units()));
      emit compared();
    };
  });
}

}  // namespace gritwright::desktop
