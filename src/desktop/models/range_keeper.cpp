#include "range_keeper.hpp"

#include <memory>
#include <utility>

#include "workers/stopped_work.hpp"

namespace gritwright::desktop {

namespace {

constexpr int still_ms = 150;

}  // namespace

RangeKeeper::RangeKeeper(Bench& bench, QObject* parent) : QObject(parent), bench_(bench) {
  stands_still_.setSingleShot(true);
  stands_still_.setInterval(still_ms);
  connect(&stands_still_, &QTimer::timeout, this, &RangeKeeper::work_out_mix);
  test_stands_still_.setSingleShot(true);
  test_stands_still_.setInterval(still_ms);
  connect(&test_stands_still_, &QTimer::timeout, this, &RangeKeeper::work_out_test);
}

const BenchRanges* RangeKeeper::mix() {
  const auto question = mix_question(bench_);
  if (!question) {
    stands_still_.stop();
    mix_job_.cancel();
    mix_.reset();
    return nullptr;
  }
  if (mix_ && mix_->of == *question) return mix_.get();
  mix_job_.cancel();
  drawn_ = uncertain(*question, bench_.catalogue(), drawn_.get());
  mix_ = std::make_shared<const BenchRanges>(ranges_of(*question, *drawn_, moving_sample, run_in_order));
  stands_still_.start();
  return mix_.get();
}

void RangeKeeper::work_out_mix() {
  stands_still_.stop();
  if (!mix_ || mix_->draws == standing_sample.draws) return;
  mix_job_.start([this, question = mix_->of, drawn = drawn_](const std::stop_token& stop, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    stand_behind_the_typing();
    auto whole = std::make_shared<BenchRanges>(ranges_of(question, *drawn, standing_sample, on_all_cores_until(stop)));
    add_narrowing(*whole, *drawn, standing_sample, on_all_cores_until(stop));
    return [this, whole] {
      mix_ = whole;
      emit mix_changed();
    };
  });
}

const TestRanges* RangeKeeper::test() {
  const auto question = test_question(bench_);
  if (!question) {
    test_stands_still_.stop();
    test_job_.cancel();
    asked_of_test_.reset();
    test_.reset();
    return nullptr;
  }
  if (test_ && test_->of == *question) return test_.get();
  test_.reset();
  if (asked_of_test_ != question) {
    asked_of_test_ = question;
    // Both cores belong to the typing while there is any.
    test_job_.cancel();
    test_stands_still_.start();
  }
  return nullptr;
}

void RangeKeeper::work_out_test() {
  test_stands_still_.stop();
  if (!asked_of_test_ || test_) return;
  test_job_.start([this, question = *asked_of_test_](const std::stop_token& stop, const BackgroundJob::Progress&) -> BackgroundJob::Delivery {
    stand_behind_the_typing();
    auto ranges = ranges_of(question, on_all_cores_until(stop));
    return [this, kept = std::make_shared<const TestRanges>(std::move(ranges))] {
      test_ = kept;
      emit test_changed();
    };
  });
}

void RangeKeeper::finish() {
  (void)mix();
  (void)test();
  work_out_mix();
  work_out_test();
  mix_job_.wait();
  test_job_.wait();
}

}  // namespace gritwright::desktop
