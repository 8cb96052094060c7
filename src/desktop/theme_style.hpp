#pragma once
#include <QFont>
#include <QProxyStyle>
#include <QString>

class QLabel;
class QStyleOptionComboBox;

namespace gritwright::desktop {

/// Property of a bar of tabs whose names stand closer together than usual.
constexpr const char* close_names = "close_names";

/// The library's style with one thing mended: on a dark ground it derives edges darker than the ground, so that fields and
/// sliders lose their outline. Here every field has an edge in a colour of the theme. Source for 3:1: WCAG 2.1, 1.4.11.
/// Frames called "card" or "caution" get their ground and edge here, labels whose property "role" is "muted", "fault", "heading" or
/// "figure" their colour or weight: a style sheet does the same, but then every size of every widget goes through its rules.
class ThemeStyle : public QProxyStyle {
  Q_OBJECT
 public:
  ThemeStyle();

  /// Arrows of a row of tabs are as wide as every other target.
  [[nodiscard]] int pixelMetric(PixelMetric metric, const QStyleOption* option = nullptr, const QWidget* widget = nullptr) const override;
  /// A menu taller than the screen scrolls; in columns, as else, large text would reach beyond the side.
  int styleHint(StyleHint hint, const QStyleOption* option = nullptr, const QWidget* widget = nullptr, QStyleHintReturn* answer = nullptr) const override;
  using QProxyStyle::polish;
  /// A button beside tabs stands in the middle of their height.
  QRect subElementRect(SubElement element, const QStyleOption* option, const QWidget* widget) const override;
  QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents, const QWidget* widget) const override;
  void polish(QWidget* widget) override;
  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter, const QWidget* widget) const override;
  void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter, const QWidget* widget) const override;
  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter, const QWidget* widget) const override;

 private:
  void draw_edge(const QStyleOption* option, QRect rect, QPainter* painter) const;
};

/// The font in which a text stands whole in so much room: as given, or narrower, by a fifth at most.
[[nodiscard]] QFont narrowed_for(const QString& text, int room, const QFont& font);

/// What a box leaves for the choice in it.
[[nodiscard]] int room_for_choice(const QStyle& style, const QStyleOptionComboBox& option, const QWidget* box);

/// Another role for a label that may be on the screen already; an empty one makes it plain.
void give_role(QLabel& label, const QString& role);

}  // namespace gritwright::desktop
