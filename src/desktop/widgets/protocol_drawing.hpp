#pragma once
#include <QWidget>

#include "models/protocols.hpp"

namespace gritwright::desktop {

/// How a measurement is made, drawn; its description says the same in a sentence.
class ProtocolDrawing : public QWidget {
  Q_OBJECT
 public:
  explicit ProtocolDrawing(QWidget* parent = nullptr);

  void show_protocol(Protocol protocol);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  Protocol protocol_ = Protocol::jug;
};

}  // namespace gritwright::desktop
