#include "theme_style.hpp"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QFontMetrics>
#include <QLabel>
#include <QPainter>
#include <QPolygon>
#include <QStringList>
#include <QStyleOption>
#include <algorithm>

#include "text.hpp"
#include "theme.hpp"

namespace gritwright::desktop {

namespace {

constexpr int before_heading = 5;  // else one at the right would touch the next
constexpr int least_target = 24;  // pixels, docs/accessibility.md

}  // namespace

ThemeStyle::ThemeStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void ThemeStyle::draw_edge(const QStyleOption* option, QRect rect, QPainter* painter) const {
  const bool focused = (option->state & State_HasFocus) && (option->state & State_Enabled);
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setPen(QPen(focused ? current_colours().palette.color(QPalette::Highlight) : current_colours().field_edge, focused ? 2 : 1));
  painter->setBrush(Qt::NoBrush);
  const double inset = focused ? 1.0 : 0.5;
  painter->drawRoundedRect(QRectF(rect).adjusted(inset, inset, -inset, -inset), 2, 2);
  painter->restore();
}

int ThemeStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
  const int usual = QProxyStyle::pixelMetric(metric, option, widget);
  constexpr int around_tips = 5;
  if (metric == PM_IndicatorWidth || metric == PM_IndicatorHeight || metric == PM_ExclusiveIndicatorWidth || metric == PM_ExclusiveIndicatorHeight)
    return std::max(usual, (widget != nullptr ? widget->fontMetrics() : QFontMetrics(QApplication::font())).ascent());
  if (metric == PM_ToolTipLabelFrameWidth) return std::max(usual, around_tips);
  constexpr int around_close_names = 12;
  if (metric == PM_TabBarTabHSpace && widget != nullptr && widget->property(close_names).toBool()) return around_close_names;
  return metric == PM_TabBarScrollButtonWidth ? std::max(usual, least_target) : usual;
}

int ThemeStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget, QStyleHintReturn* answer) const {
  // Which of several tables the keys go to is seen by what is chosen in it.
  return hint == SH_Menu_Scrollable || hint == SH_ItemView_ChangeHighlightOnFocus ? 1 : QProxyStyle::styleHint(hint, option, widget, answer);
}

QRect ThemeStyle::subElementRect(SubElement element, const QStyleOption* option, const QWidget* widget) const {
  QRect rect = QProxyStyle::subElementRect(element, option, widget);
  const auto* const tabs = qstyleoption_cast<const QStyleOptionTabWidgetFrame*>(option);
  if (tabs == nullptr) return rect;
  // As high as the bar, so that the line below the tabs goes on below it.
  if (element == SE_TabWidgetRightCorner) rect.setTop(std::max(0, std::min(rect.top(), rect.bottom() - tabs->tabBarSize.height() + 1)));
  return rect;
}

QSize ThemeStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents, const QWidget* widget) const {
  const QSize usual = QProxyStyle::sizeFromContents(type, option, contents, widget);
  constexpr int beside_words = 8;  // they would touch the edge
  constexpr int least_tab = 32;
  if (type == CT_TabBarTab) return usual.expandedTo(QSize(0, least_tab));
  // Between a menu's words and their keys, at every text size.
  if (type == CT_MenuItem) return usual + QSize(2 * option->fontMetrics.averageCharWidth(), 0);
  const auto* const header = qstyleoption_cast<const QStyleOptionHeader*>(option);
  if (type == CT_HeaderSection && header != nullptr && (header->textAlignment & Qt::AlignLeft)) return usual + QSize(before_heading, 0);
  // What the edge takes of it, else the widest of its words would be cut.
  constexpr int edge = 4;
  if (type == CT_ComboBox) return usual + QSize(edge, 0);
  return type == CT_PushButton ? usual + QSize(beside_words, 0) : usual;
}

void ThemeStyle::polish(QWidget* widget) {
  QProxyStyle::polish(widget);
  if (qobject_cast<QLabel*>(widget) == nullptr) return;
  const QString role = widget->property("role").toString();
  const bool is_fault = role == QStringLiteral("fault");
  if (is_fault || role == QStringLiteral("muted")) {
    QPalette palette;
    palette.setColor(QPalette::WindowText, is_fault ? current_colours().fault : current_colours().muted);
    widget->setPalette(palette);
  } else if (role == QStringLiteral("heading") || role == QStringLiteral("figure")) {
    QFont font = widget->font();
    font.setBold(true);
    widget->setFont(font);
  }
}

QFont narrowed_for(const QString& text, int room, const QFont& font) {
  constexpr int narrowest = 80;  // percent of the usual width
  QFont narrower = font;
  for (int percent = 100; percent > narrowest && QFontMetrics(narrower).horizontalAdvance(text) > room; percent -= 5) narrower.setStretch(percent - 5);
  return narrower;
}

int room_for_choice(const QStyle& style, const QStyleOptionComboBox& option, const QWidget* box) {
  constexpr int beside_text = 2;
  return style.subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, box).width() - beside_text;
}

void give_role(QLabel& label, const QString& role) {
  label.setProperty("role", role);
  label.setPalette({});
  label.style()->polish(&label);
}

void ThemeStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter, const QWidget* widget) const {
  QProxyStyle::drawPrimitive(element, option, painter, widget);
  const bool field = element == PE_FrameLineEdit || element == PE_IndicatorCheckBox || element == PE_IndicatorRadioButton;
  const bool button = element == PE_PanelButtonCommand || (element == PE_PanelButtonTool && !(option->state & State_AutoRaise));
  const bool chosen = element == PE_PanelButtonTool && (option->state & State_On);
  if (field || button || chosen) draw_edge(option, option->rect, painter);
  const bool table = element == PE_Frame && qobject_cast<const QAbstractScrollArea*>(widget) != nullptr;
  if (!table && element != PE_FrameMenu && element != PE_PanelMenu) return;
  // Shades of the ground don't tell where it ends when the ground is black.
  painter->save();
  painter->setPen(QPen(current_colours().card_edge, 1));
  painter->setBrush(Qt::NoBrush);
  painter->drawRect(option->rect.adjusted(0, 0, -1, -1));
  painter->restore();
}

void ThemeStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter, const QWidget* widget) const {
  if (element == CE_ShapedFrame && widget != nullptr) {
    const bool card = widget->objectName() == QStringLiteral("card");
    if (card || widget->objectName() == QStringLiteral("caution")) {
      constexpr double corner = 6;
      painter->save();
      painter->setRenderHint(QPainter::Antialiasing);
      painter->setPen(QPen(current_colours().card_edge, 1));
      painter->setBrush(card ? current_colours().card : current_colours().caution_fill);
      painter->drawRoundedRect(QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5), corner, corner);
      painter->restore();
      return;
    }
  }
  if (const auto* const header = qstyleoption_cast<const QStyleOptionHeader*>(option); element == CE_HeaderLabel && header != nullptr) {
    // Cut at both ends a heading would pass for another word.
    QStyleOptionHeader fitting = *header;
    if (header->textAlignment & Qt::AlignLeft) fitting.rect = visualRect(header->direction, header->rect, header->rect.adjusted(before_heading, 0, 0, 0));
    const auto elided = [&](const QString& line) { return header->fontMetrics.elidedText(line, Qt::ElideRight, fitting.rect.width()); };
    const bool breaks = !header->text.contains(u'\n') && elided(header->text) != header->text && header->rect.height() >= 2 * header->fontMetrics.lineSpacing();
    QStringList lines = (breaks ? in_two_lines(header->text) : header->text).split(u'\n');
    for (QString& line : lines) line = elided(line);
    fitting.text = lines.join(u'\n');
    return QProxyStyle::drawControl(element, &fitting, painter, widget);
  }
  if (const auto* const chosen = qstyleoption_cast<const QStyleOptionComboBox*>(option); element == CE_ComboBoxLabel && chosen != nullptr && !chosen->editable) {
    // Cut within a sign, a name would pass for a shorter one.
    QStyleOptionComboBox fitting = *chosen;
    const int room = room_for_choice(*this, *chosen, widget);
    const QFont font = narrowed_for(chosen->currentText, room, painter->font());
    fitting.currentText = QFontMetrics(font).elidedText(chosen->currentText, Qt::ElideRight, room);
    painter->save();
    painter->setFont(font);
    QProxyStyle::drawControl(element, &fitting, painter, widget);
    painter->restore();
    return;
  }
  QProxyStyle::drawControl(element, option, painter, widget);
  if (element == CE_TabBarTabShape && system_theme(current_colours().palette) == Theme::high_contrast) {
    // Shades of the ground don't tell where it ends when the ground is black.
    painter->save();
    painter->setPen(QPen(current_colours().card_edge, 1));
    painter->drawPolyline(QPolygon({option->rect.bottomLeft(), option->rect.topLeft(), option->rect.topRight(), option->rect.bottomRight()}));
    painter->restore();
  }
  if (const auto* const entry = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
      element == CE_MenuItem && entry != nullptr && entry->menuItemType == QStyleOptionMenuItem::Separator && entry->text.isEmpty()) {
    painter->save();
    painter->setPen(QPen(current_colours().field_edge, 1));
    const int middle = entry->rect.center().y();
    painter->drawLine(entry->rect.left() + 5, middle, entry->rect.right() - 5, middle);
    painter->restore();
  }
  if (element == CE_HeaderSection) {
    painter->save();
    painter->setPen(QPen(current_colours().card_edge, 1));
    painter->drawLine(option->rect.bottomLeft(), option->rect.bottomRight());
    painter->restore();
  }
  if (element != CE_TabBarTabShape || !(option->state & State_Selected)) return;
  painter->fillRect(QRect(option->rect.left() + 2, option->rect.top() + 1, option->rect.width() - 4, 2), current_colours().palette.color(QPalette::Highlight));
}

void ThemeStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter, const QWidget* widget) const {
  QProxyStyle::drawComplexControl(control, option, painter, widget);
  if (control == CC_ComboBox) return draw_edge(option, option->rect, painter);
  // In high contrast handle and groove are of one colour.
  if (control == CC_ScrollBar) return draw_edge(option, subControlRect(control, option, SC_ScrollBarSlider, widget), painter);
  if (control != CC_Slider) return;
  const QRect groove = subControlRect(control, option, SC_SliderGroove, widget);
  const QRect handle = subControlRect(control, option, SC_SliderHandle, widget);
  painter->save();
  painter->setPen(QPen(current_colours().field_edge, 1));
  const int middle = groove.center().y();
  if (handle.right() + 1 < groove.right()) painter->drawLine(handle.right() + 1, middle, groove.right(), middle);
  painter->restore();
  draw_edge(option, handle, painter);
}

}  // namespace gritwright::desktop
