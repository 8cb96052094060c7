#pragma once
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <functional>
#include <stop_token>

namespace gritwright::desktop {

/// Long work beside the window. Only the newest answer counts: a start stops what runs, and the answer of what was stopped is dropped.
class BackgroundJob : public QObject {
  Q_OBJECT
 public:
  using Progress = std::function<void(int done, int of)>;
  /// What to do with an answer, on the window's thread.
  using Delivery = std::function<void()>;
  /// Runs on another thread, looks at the token now and then, and must not touch the window.
  using Work = std::function<Delivery(const std::stop_token&, const Progress&)>;

  explicit BackgroundJob(QObject* parent = nullptr);
  /// Stops the work and waits for it.
  ~BackgroundJob() override;

  void start(Work work);
  /// Begins when nothing newer has been asked for a moment: whoever types on has the processors.
  void start_when_still(Work work);
  void cancel();
  [[nodiscard]] bool is_running() const { return running_; }
  /// Waits for the work and delivers its answer; for tests and for pictures of the window.
  void wait();

 signals:
  void progressed(int done, int of);
  void running_changed(bool running);

 private:
  void set_running(bool running);

  QThreadPool threads_;
  QTimer still_;
  Work waiting_;
  std::stop_source stop_;
  int ticket_ = 0;
  bool running_ = false;
};

}  // namespace gritwright::desktop
