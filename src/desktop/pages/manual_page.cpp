#include "manual_page.hpp"

#include <QFile>
#include <QImage>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QRegularExpression>
#include <QSplitter>
#include <QStyledItemDelegate>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTextCharFormat>
#include <QTextCursor>
#include <QTextDocument>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>
#include <vector>

#include "widgets/flow_line.hpp"

namespace gritwright::desktop {

namespace {

constexpr const char* index_page = "manual/desktop";

QString text_of(const QString& page) {
  QFile file(QStringLiteral(":/docs/%1.md").arg(page));
  return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

QString title_of(const QString& markdown) { return markdown.section(u'\n', 0, 0).remove(QRegularExpression(QStringLiteral("^#+ "))); }

QStringList words_in(const QString& typed) { return typed.split(u' ', Qt::SkipEmptyParts); }

/// By more than their colour.
void underline_links(QTextDocument& document) {
  QTextCharFormat underlined;
  underlined.setFontUnderline(true);
  QTextCursor cursor(&document);
  for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
    std::vector<std::pair<int, int>> links;
    for (auto at = block.begin(); !at.atEnd(); ++at) {
      if (at.fragment().charFormat().isAnchor()) links.emplace_back(at.fragment().position(), at.fragment().length());
    }
    for (const auto& [from, length] : links) {
      cursor.setPosition(from);
      cursor.setPosition(from + length, QTextCursor::KeepAnchor);
      cursor.mergeCharFormat(underlined);
    }
  }
}

}  // namespace

/// Shows pictures no wider than the page, and those of the dark theme where that is on.
class ManualReader : public QTextBrowser {
 public:
  using QTextBrowser::QTextBrowser;

  QVariant loadResource(int type, const QUrl& name) override {
    if (type != QTextDocument::ImageResource) return QTextBrowser::loadResource(type, name);
    QString path = u':' + source().resolved(name).path();
    if (palette().color(QPalette::Base).lightness() < 128) path.replace(QStringLiteral("_light.png"), QStringLiteral("_dark.png"));
    const QImage image(path);
    constexpr int margin = 40;
    constexpr int least_width = 320;
    const int width = std::max(least_width, viewport()->width() - margin);
    return image.width() > width ? image.scaledToWidth(width, Qt::SmoothTransformation) : image;
  }
};

/// A row of the chapters is as high as its lines need, and a finger.
class ChapterRows : public QStyledItemDelegate {
 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    constexpr int least_row = 28;
    constexpr int around_words = 8;
    const QSize hint = QStyledItemDelegate::sizeHint(option, index);
    return {hint.width(), std::max(least_row, hint.height() + around_words)};
  }
};

ManualPage::ManualPage(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("manual_page"));
  auto* layout = new QVBoxLayout(this);
  auto* tools = new FlowLine(this);
  layout->addWidget(tools);
  words_ = new QLineEdit(this);
  words_->setObjectName(QStringLiteral("manual_words"));
  words_->setPlaceholderText(tr("one word or several"));
  words_->setClearButtonEnabled(true);
  words_->setMinimumHeight(28);
  found_ = new QLabel(this);
  found_->setObjectName(QStringLiteral("manual_found"));
  const auto button = [&](const char* name, const QString& text) {
    auto* made = new QPushButton(text, this);
    made->setObjectName(QString::fromLatin1(name));
    made->setAccessibleName(text);
    made->setMinimumHeight(28);
    return made;
  };
  auto* back = button("manual_back", tr("Page before"));
  auto* leave = button("manual_leave", tr("To the work (Esc)"));
  tools->add(tr("Search the manual"), words_, 1, QString(14, u'n'));
  tools->add({}, found_, 0, tr("in %n chapter(s)", nullptr, 10));
  tools->add({}, back);
  tools->add({}, leave);
  if (const QLocale::Language language = QLocale().language(); language != QLocale::English && language != QLocale::C) {
    tools->begin_line();
    auto* written = new QLabel(tr("The manual is written in English."), this);
    written->setObjectName(QStringLiteral("manual_language"));
    tools->add({}, written);
  }
  auto* sides = new QSplitter(this);
  sides->setObjectName(QStringLiteral("manual_sides"));
  layout->addWidget(sides, 1);
  list_ = new QListWidget(sides);
  list_->setObjectName(QStringLiteral("manual_contents"));
  list_->setAccessibleName(tr("Chapters"));
  list_->setMinimumWidth(160);
  list_->setWordWrap(true);
  list_->setItemDelegate(new ChapterRows(list_));
  reader_ = new ManualReader(sides);
  reader_->setObjectName(QStringLiteral("manual_text"));
  reader_->setAccessibleName(tr("Text of the chapter"));
  reader_->setOpenLinks(false);
  sides->setStretchFactor(1, 1);
  sides->setSizes({300, 900});
  back->setEnabled(false);
  connect(words_, &QLineEdit::textChanged, this, &ManualPage::fill_list);
  connect(words_, &QLineEdit::returnPressed, this, [this] {
    if (list_->count() > 0) list_->setCurrentRow(0);
  });
  connect(list_, &QListWidget::currentRowChanged, this, &ManualPage::choose);
  connect(reader_, &QTextBrowser::sourceChanged, this, [this] { underline_links(*reader_->document()); });
  connect(reader_, &QTextBrowser::anchorClicked, this, &ManualPage::follow);
  connect(reader_, &QTextBrowser::backwardAvailable, back, &QWidget::setEnabled);
  connect(back, &QPushButton::clicked, this, [this] {
    reader_->backward();
    fill_list();
  });
  connect(leave, &QPushButton::clicked, this, &ManualPage::left);
}

// The index names the pages and their order, so that none is listed twice or forgotten.
void ManualPage::read_pages() {
  const QString index = text_of(QString::fromLatin1(index_page));
  const auto add = [this](const QString& path) {
    const QString text = text_of(path);
    if (!text.isEmpty() && std::ranges::find(all_, path, &Page::path) == all_.end()) all_.push_back({path, title_of(text), text});
  };
  add(QString::fromLatin1(index_page));
  static const QRegularExpression link(QStringLiteral("\\]\\((\\.\\./)?([a-zA-Z_/-]+)\\.md\\)"));
  for (auto found = link.globalMatch(index); found.hasNext();) {
    const QRegularExpressionMatch match = found.next();
    add(match.captured(1).isEmpty() ? QStringLiteral("manual/") + match.captured(2) : match.captured(2));
  }
}

void ManualPage::fill_list() {
  // Read when it is first opened: most starts of the program never do.
  if (all_.empty()) read_pages();
  const QStringList words = words_in(words_->text());
  const QSignalBlocker quiet(list_);
  list_->clear();
  for (const Page& page : all_) {
    const bool holds_all = std::ranges::all_of(words, [&](const QString& word) { return page.text.contains(word, Qt::CaseInsensitive); });
    if (!holds_all) continue;
    auto* item = new QListWidgetItem(page.title, list_);
    item->setData(Qt::UserRole, page.path);
    item->setToolTip(page.title);
    if (page.path == current()) list_->setCurrentItem(item);
  }
  found_->setText(words.isEmpty() ? QString() : list_->count() == 0 ? tr("in no chapter") : tr("in %n chapter(s)", nullptr, list_->count()));
  mark_words();
}

void ManualPage::choose() {
  if (const QListWidgetItem* item = list_->currentItem()) {
    reader_->setSource(QUrl(QStringLiteral("qrc:/docs/%1.md").arg(item->data(Qt::UserRole).toString())), QTextDocument::MarkdownResource);
    mark_words();
  }
}

void ManualPage::open(const QString& page) {
  const QUrl url(QStringLiteral("qrc:/docs/%1.md").arg(page));
  words_->clear();
  reader_->setSource(url, QTextDocument::MarkdownResource);
  fill_list();
  reader_->setFocus();
}

QString ManualPage::current() const {
  QString path = reader_->source().path();
  path.remove(QStringLiteral("/docs/"));
  return path.chopped(path.endsWith(QStringLiteral(".md")) ? 3 : 0);
}

void ManualPage::search(const QString& words) { words_->setText(words); }

// What is not compiled in isn't opened: the manual fetches nothing.
void ManualPage::follow(const QUrl& link) {
  const QUrl url = reader_->source().resolved(link);
  if (url.scheme() != QStringLiteral("qrc") || !QFile::exists(u':' + url.path())) return;
  reader_->setSource(url, QTextDocument::MarkdownResource);
  fill_list();
}

void ManualPage::mark_words() {
  QList<QTextEdit::ExtraSelection> marks;
  for (const QString& word : words_in(words_->text())) {
    for (QTextCursor at = reader_->document()->find(word); !at.isNull(); at = reader_->document()->find(word, at)) {
      QTextEdit::ExtraSelection mark;
      mark.cursor = at;
      mark.format.setBackground(palette().color(QPalette::Highlight));
      mark.format.setForeground(palette().color(QPalette::HighlightedText));
      marks.append(mark);
    }
  }
  reader_->setExtraSelections(marks);
  if (marks.isEmpty()) return;
  QTextCursor first = marks.front().cursor;
  first.clearSelection();
  reader_->setTextCursor(first);
}

void ManualPage::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) emit left();
  else QWidget::keyPressEvent(event);
}

// Pictures take the width and the colours the page has now.
void ManualPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (list_->count() == 0 && words_->text().isEmpty()) fill_list();
  if (!current().isEmpty()) reader_->reload();
}

}  // namespace gritwright::desktop
