#include "background_job.hpp"

#include <QCoreApplication>
#include <utility>

#include "stopped_work.hpp"

namespace gritwright::desktop {

BackgroundJob::BackgroundJob(QObject* parent) : QObject(parent) {
  constexpr int still_ms = 150;
  threads_.setMaxThreadCount(1);
  still_.setSingleShot(true);
  still_.setInterval(still_ms);
  connect(&still_, &QTimer::timeout, this, [this] { start(std::exchange(waiting_, {})); });
}

BackgroundJob::~BackgroundJob() {
  stop_.request_stop();
  threads_.waitForDone();
}

void BackgroundJob::start_when_still(Work work) {
  cancel();
  waiting_ = std::move(work);
  set_running(true);
  still_.start();
}

void BackgroundJob::start(Work work) {
  still_.stop();
  stop_.request_stop();
  stop_ = std::stop_source();
  const int ticket = ++ticket_;
  set_running(true);
  threads_.start([this, ticket, token = stop_.get_token(), work = std::move(work)] {
    const Progress progress = [&](int done, int of) {
      QMetaObject::invokeMethod(this, [this, ticket, done, of] {
        if (ticket == ticket_) emit progressed(done, of);
      }, Qt::QueuedConnection);
    };
    Delivery deliver;
    try {
      if (!token.stop_requested()) deliver = work(token, progress);
    } catch (const WorkStopped&) {
      // What it was stopped for has its own answer.
    }
    QMetaObject::invokeMethod(this, [this, ticket, token, deliver = std::move(deliver)] {
      // Stale: something newer was started, or this was cancelled, after the work had its answer.
      if (ticket != ticket_ || token.stop_requested()) return;
      set_running(false);
      if (deliver) deliver();
    }, Qt::QueuedConnection);
  });
}

void BackgroundJob::cancel() {
  still_.stop();
  stop_.request_stop();
  set_running(false);
}

void BackgroundJob::wait() {
  if (still_.isActive()) start(std::exchange(waiting_, {}));
  threads_.waitForDone();
  QCoreApplication::sendPostedEvents(this);
}

void BackgroundJob::set_running(bool running) {
  if (running == running_) return;
  running_ = running;
  emit running_changed(running);
}

}  // namespace gritwright::desktop
